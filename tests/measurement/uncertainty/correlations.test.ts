import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { choleskyOf, correlationMatrix } from "../../../packages/measurement/src/uncertainty/correlations.ts";

describe("correlationMatrix", () => {
  test("holds what is stated on both sides of the diagonal", () => {
    const matrix = correlationMatrix(["a", "b", "c"], [{ between: ["c", "a"], coefficient: -0.5 }]);
    expect(matrix.map((row) => [...row])).toEqual([
      [1, 0, -0.5],
      [0, 1, 0],
      [-0.5, 0, 1],
    ]);
  });

  test.each([
    [["a", "a"], [], "inputs"],
    [["a", "b"], [{ between: ["a", "x"] as const, coefficient: 0 }], "correlations.between"],
    [["a", "b"], [{ between: ["a", "a"] as const, coefficient: 0.1 }], "correlations.between"],
    [["a", "b"], [{ between: ["a", "b"] as const, coefficient: 1.01 }], "correlations.coefficient"],
    [["a", "b"], [{ between: ["a", "b"] as const, coefficient: Number.NaN }], "correlations.coefficient"],
    [
      ["a", "b"],
      [
        { between: ["a", "b"] as const, coefficient: 0.1 },
        { between: ["b", "a"] as const, coefficient: 0.2 },
      ],
      "correlations.between",
    ],
  ])("refuses the inputs %j with %j", (names, correlations, argument) => {
    expect(() => correlationMatrix(names, correlations)).toThrow(InvalidArgumentError);
    expect(() => correlationMatrix(names, correlations)).toThrow(`${argument} must be`);
  });
});

describe("choleskyOf", () => {
  test("3-4-5: a correlation of 0.6 leaves 0.8", () => {
    const triangle = choleskyOf(correlationMatrix(["a", "b"], [{ between: ["a", "b"], coefficient: 0.6 }]));
    expect([...(triangle[1] ?? [])].map((part) => part.toFixed(15))).toEqual([
      "0.600000000000000",
      "0.800000000000000",
    ]);
  });

  test("a whole correlation leaves nothing of its own", () => {
    const triangle = choleskyOf(correlationMatrix(["a", "b"], [{ between: ["a", "b"], coefficient: -1 }]));
    expect([...(triangle[1] ?? [])]).toEqual([-1, 0]);
  });

  test("refuses what cannot hold together", () => {
    // Two that each go with a third cannot go against each other: 1 + 2(0.9)(0.9)(−0.9) − 3(0.81) < 0.
    const impossible = correlationMatrix(
      ["a", "b", "c"],
      [
        { between: ["a", "b"], coefficient: 0.9 },
        { between: ["a", "c"], coefficient: 0.9 },
        { between: ["b", "c"], coefficient: -0.9 },
      ],
    );
    expect(() => choleskyOf(impossible)).toThrow("correlations must be");
    const halfWhole = correlationMatrix(
      ["a", "b", "c"],
      [
        { between: ["a", "b"], coefficient: 1 },
        { between: ["a", "c"], coefficient: 0.5 },
      ],
    );
    expect(() => choleskyOf(halfWhole)).toThrow("correlations must be");
  });
});
