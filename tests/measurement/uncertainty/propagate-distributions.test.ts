import { propagateDistributions, type SimulationProblem } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const problem: SimulationProblem = {
  inputs: [
    { name: "torso", distribution: { shape: "normal", mean: 430, sd: 4 } },
    { name: "scale", distribution: { shape: "rectangular", lower: -3, upper: 3 } },
  ],
  model: (x) => Number(x[0]) + Number(x[1]),
  seed: 11,
};

describe("propagateDistributions", () => {
  test("the same seed gives the same result, another one another", () => {
    expect(propagateDistributions(problem)).toEqual(propagateDistributions(problem));
    expect(propagateDistributions({ ...problem, seed: 12 }).value).not.toBe(
      propagateDistributions(problem).value,
    );
  });

  test("goes on until the wanted tolerance is reached", () => {
    // u² = 16 + 3 = 19
    const coarse = propagateDistributions({ ...problem, tolerance: 0.2 });
    const fine = propagateDistributions({ ...problem, tolerance: 0.05 });
    expect([coarse.isStable, fine.isStable]).toEqual([true, true]);
    expect(fine.trials).toBeGreaterThan(coarse.trials);
    expect(fine.reachedTolerance).toBeLessThanOrEqual(0.05);
    expect(Math.abs(fine.uncertainty - Math.sqrt(19))).toBeLessThan(0.1);
  });

  test("says so when it had to stop before", () => {
    const stopped = propagateDistributions({ ...problem, tolerance: 1e-6, mostTrials: 30_000 });
    expect(stopped).toMatchObject({ isStable: false, trials: 30_000, tolerance: 1e-6 });
  });

  test("takes a fixed number of trials", () => {
    expect(propagateDistributions({ ...problem, trials: 100 }).trials).toBe(100);
    expect(propagateDistributions({ ...problem, trials: 25_000 }).trials).toBe(25_000);
  });

  test("takes larger batches where little lies outside", () => {
    expect(propagateDistributions({ ...problem, probability: 0.999, tolerance: 1 }).trials).toBe(200_000);
  });

  test("an exact result is stable at once", () => {
    const exact = propagateDistributions({ ...problem, model: () => 7 });
    expect(exact).toMatchObject({ value: 7, uncertainty: 0, isStable: true, tolerance: 0, trials: 20_000 });
  });

  test("wholly correlated inputs cancel", () => {
    const inputs = ["a", "b"].map((name) => ({
      name,
      distribution: { shape: "normal" as const, mean: 0, sd: 5 },
    }));
    const model = (x: ArrayLike<number>) => Number(x[0]) - Number(x[1]);
    const correlations = [{ between: ["a", "b"] as const, coefficient: 1 }];
    const { uncertainty } = propagateDistributions({ inputs, model, correlations, seed: 1, trials: 1000 });
    expect(uncertainty).toBe(0);
  });

  test.each<[Partial<SimulationProblem>, string]>([
    [{ inputs: [] }, "inputs"],
    [{ probability: 1 }, "probability"],
    [{ trials: 99 }, "trials"],
    [{ tolerance: 0 }, "tolerance"],
    [{ mostTrials: 10_000 }, "mostTrials"],
    [{ seed: 0.5 }, "seed"],
    [{ model: () => Number.NaN }, "model"],
    [{ correlations: [{ between: ["torso", "scale"], coefficient: 0.5 }] }, "correlations.between"],
    [
      { inputs: [{ name: "a", distribution: { shape: "normal", mean: 0, sd: -1 } }] },
      "inputs[0].distribution.sd",
    ],
  ])("refuses %o", (change, argument) => {
    expect(() => propagateDistributions({ ...problem, ...change })).toThrow(`${argument} must be`);
  });
});
