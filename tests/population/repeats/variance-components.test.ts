import { InvalidArgumentError } from "@tapewise/outcome";
import { varianceComponents } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("varianceComponents", () => {
  test("balanced: analysis of variance by hand", () => {
    // Means 402, 418, 440 about 420: MSB = 2 (324 + 4 + 400) / 2 = 728; MSW = (8 + 8 + 0) / 3.
    const parts = varianceComponents([
      [400, 404],
      [420, 416],
      [440, 440],
    ]);
    expect([parts.method, parts.people, parts.readings, parts.mean]).toEqual(["anova", 3, 6, 420]);
    const within = 16 / 3;
    const between = (728 - within) / 2;
    expect(parts.withinSd).toBeCloseTo(Math.sqrt(within), 12);
    expect(parts.betweenSd).toBeCloseTo(Math.sqrt(between), 12);
    expect(parts.meanError).toBeCloseTo(Math.sqrt(728 / 6), 12);
    expect(parts.reliability).toBeCloseTo(between / (between + within), 12);
    // Var MSB = 2·728²/2, Var MSW = 2·(16/3)²/3; over k and 2σb.
    const variance = Math.sqrt(728 ** 2 + (2 * within ** 2) / 3) / 2;
    expect(parts.betweenError).toBeCloseTo(variance / (2 * Math.sqrt(between)), 12);
    expect(parts.withinError).toBeCloseTo(Math.sqrt(within / 6), 12);
  });

  test("finds no spread between people where readings differ more than their means", () => {
    const parts = varianceComponents([
      [400, 420],
      [421, 401],
      [399, 419],
    ]);
    expect(parts.betweenSd).toBe(0);
    expect("betweenError" in parts).toBe(false);
    expect(parts.reliability).toBe(0);
    const unequal = varianceComponents([
      [400, 420],
      [421, 401, 410],
      [399, 419],
    ]);
    expect(unequal.betweenSd).toBe(0);
    expect("betweenError" in unequal).toBe(false);
  });

  test("by maximum likelihood: n in place of n − 1 between people who were read equally often", () => {
    const people = [
      [400, 404],
      [420, 416],
      [440, 440],
      [398, 402],
    ];
    // Closed form for balanced data: σ²b = ((1 − 1/n) MSB − MSW) / k (Searle, Casella & McCulloch 1992, 3.7).
    const anova = varianceComponents(people);
    const within = anova.withinSd ** 2;
    const meanSquareBetween = 2 * anova.betweenSd ** 2 + within;
    const likelihood = varianceComponents(people, { method: "maximum-likelihood" });
    expect(likelihood.withinSd).toBeCloseTo(anova.withinSd, 6);
    expect(likelihood.betweenSd).toBeCloseTo(Math.sqrt((0.75 * meanSquareBetween - within) / 2), 5);
    expect(likelihood.mean).toBeCloseTo(anova.mean, 6);
    // Standard error of the mean: √((σ²w + kσ²b) / nk).
    const own = likelihood.withinSd ** 2 + 2 * likelihood.betweenSd ** 2;
    expect(likelihood.meanError).toBeCloseTo(Math.sqrt(own / 8), 5);
  });

  test("finds both spreads again among people who were read one to four times", () => {
    const random = createRandom(14);
    const people = Array.from({ length: 400 }, (_, i) => {
      const own = 430 + 25 * random.normal();
      return Array.from({ length: 1 + (i % 4) }, () => own + 8 * random.normal());
    });
    const parts = varianceComponents(people);
    expect(parts.method).toBe("maximum-likelihood");
    expect(Math.abs(parts.betweenSd - 25)).toBeLessThan(4 * (parts.betweenError ?? 0));
    expect(Math.abs(parts.withinSd - 8)).toBeLessThan(4 * parts.withinError);
    expect(Math.abs(parts.mean - 430)).toBeLessThan(4 * parts.meanError);
    // 25/√(2·400) and 8/√(2·600) if each spread were seen by itself.
    expect(parts.betweenError).toBeGreaterThan(25 / Math.sqrt(800));
    expect(parts.withinError).toBeGreaterThan(0.95 * (8 / Math.sqrt(1200)));
  });

  test("manages readings that never differ within a person", () => {
    const parts = varianceComponents([
      [400, 400],
      [420, 420],
      [440, 440],
    ]);
    expect(parts.withinSd).toBe(0);
    expect(parts.betweenSd).toBe(20);
    expect(parts.reliability).toBe(1);
    const unequal = varianceComponents([[400, 400], [420], [440, 440]]);
    expect([unequal.withinSd, unequal.mean, unequal.reliability]).toEqual([0, 420, 1]);
    expect(unequal.betweenSd).toBeCloseTo(Math.sqrt(800 / 3), 12);
    expect(unequal.meanError).toBeCloseTo(Math.sqrt(800 / 9), 12);
  });

  test.each<[string, number[][]]>([
    [
      "two people",
      [
        [1, 2],
        [3, 4],
      ],
    ],
    ["a person without readings", [[1, 2], [3, 4], []]],
    ["nobody read twice", [[1], [2], [3]]],
    [
      "readings that are all the same",
      [
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    ],
    [
      "what is no number",
      [
        [1, 2],
        [3, 4],
        [5, Number.NaN],
      ],
    ],
  ])("refuses %s", (_, people) => {
    expect(() => varianceComponents(people)).toThrow(InvalidArgumentError);
  });

  test("refuses analysis of variance for unequal readings", () => {
    const people = [[1, 2], [3, 4], [5]];
    expect(() => varianceComponents(people, { method: "anova" })).toThrow(InvalidArgumentError);
    // @ts-expect-error: no such method
    expect(() => varianceComponents(people, { method: "guess" })).toThrow(InvalidArgumentError);
  });
});
