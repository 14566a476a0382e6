import { type PropagationProblem, propagateUncertainty } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const product: PropagationProblem = {
  inputs: [
    { name: "a", value: 40, uncertainty: 3 },
    { name: "b", value: 10, uncertainty: 1 },
  ],
  model: (x) => Number(x[0]) * Number(x[1]),
};

describe("propagateUncertainty", () => {
  test("finds the slopes by itself", () => {
    const { lines, uncertainty } = propagateUncertainty(product);
    expect(lines.map(({ sensitivity }) => sensitivity.toFixed(9))).toEqual(["10.000000000", "40.000000000"]);
    expect(uncertainty).toBeCloseTo(50, 9);
  });

  test("an exact input has a slope and brings nothing", () => {
    const inputs = [{ name: "a", value: 0, uncertainty: 0 }];
    const { lines, uncertainty, degreesOfFreedom } = propagateUncertainty({
      inputs,
      model: (x) => 3 * Number(x[0]),
    });
    expect(lines[0]?.sensitivity).toBeCloseTo(3, 10);
    expect([uncertainty, degreesOfFreedom, lines[0]?.share]).toEqual([0, Number.POSITIVE_INFINITY, 0]);
  });

  test("a correlation counts twice over", () => {
    // 9 + 16 + 2 · 0.5 · 3 · 4 = 37
    const sum = propagateUncertainty({
      inputs: [
        { name: "a", value: 0, uncertainty: 3 },
        { name: "b", value: 0, uncertainty: 4 },
      ],
      model: (x) => Number(x[0]) + Number(x[1]),
      sensitivities: [1, 1],
      correlations: [{ between: ["a", "b"], coefficient: 0.5 }],
    });
    expect(sum.uncertainty).toBe(Math.sqrt(37));
    expect(sum.lines.map(({ share }) => share)).toEqual([15 / 37, 22 / 37]);
  });

  test("inputs that hang together are one component with the fewest degrees of freedom", () => {
    const inputs = [
      { name: "a", value: 0, uncertainty: 3, degreesOfFreedom: 20 },
      { name: "b", value: 0, uncertainty: 3, degreesOfFreedom: 5 },
      { name: "c", value: 0, uncertainty: 3, degreesOfFreedom: 8 },
    ];
    const sensitivities = [1, 1, 1];
    const model = (x: ArrayLike<number>) => Number(x[0]) + Number(x[1]) + Number(x[2]);
    const joined = propagateUncertainty({
      inputs,
      model,
      sensitivities,
      correlations: [{ between: ["a", "b"], coefficient: 1 }],
    });
    // a and b: 36 with 5 degrees of freedom, c: 9 with 8. 45² / (36²/5 + 9²/8)
    expect(joined.degreesOfFreedom).toBeCloseTo(45 ** 2 / (36 ** 2 / 5 + 81 / 8), 10);
    // Apart: 27² / (81/20 + 81/5 + 81/8)
    const apart = propagateUncertainty({ inputs, model, sensitivities });
    expect(apart.degreesOfFreedom).toBeCloseTo(729 / (81 / 20 + 81 / 5 + 81 / 8), 10);
  });

  test("opposite parts of a whole correlation leave nothing", () => {
    const result = propagateUncertainty({
      inputs: [
        { name: "a", value: 5, uncertainty: 0.1 },
        { name: "b", value: 4, uncertainty: 0.1 },
      ],
      model: (x) => Number(x[0]) - Number(x[1]),
      sensitivities: [1, -1],
      correlations: [{ between: ["a", "b"], coefficient: 1 }],
    });
    expect(result).toMatchObject({ value: 1, uncertainty: 0 });
  });

  test.each<[Partial<PropagationProblem>, string]>([
    [{ inputs: [] }, "inputs"],
    [{ inputs: [{ name: "a", value: Number.NaN, uncertainty: 1 }] }, "inputs[0].value"],
    [{ inputs: [{ name: "a", value: 1, uncertainty: -1 }] }, "inputs[0].uncertainty"],
    [
      { inputs: [{ name: "a", value: 1, uncertainty: 1, degreesOfFreedom: 0 }] },
      "inputs[0].degreesOfFreedom",
    ],
    [{ sensitivities: [1] }, "sensitivities"],
    [{ sensitivities: [1, Number.NaN] }, "sensitivities[1]"],
    [{ sensitivities: [1e308, 1e308] }, "sensitivities times uncertainties"],
    [{ model: () => Number.NaN }, "model"],
    [{ secondOrder: true, correlations: [{ between: ["a", "b"], coefficient: 0.1 }] }, "correlations"],
  ])("refuses %o", (change, argument) => {
    expect(() => propagateUncertainty({ ...product, ...change })).toThrow(`${argument} must be`);
  });
});
