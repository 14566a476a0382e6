import { InvalidArgumentError } from "@tapewise/outcome";
import { bootstrapInterval, samplePercentile, weightedSummary } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const torsos = Array.from({ length: 40 }, (_, i) => 380 + i);
const mean = (sample: readonly number[]) => sample.reduce((sum, each) => sum + each, 0) / sample.length;

describe("bootstrapInterval", () => {
  test("finds the standard error of a mean", () => {
    const result = bootstrapInterval(torsos, mean, { random: createRandom(1) });
    expect(result.value).toBe(399.5);
    // s/√n with divisor n: √((40² − 1)/12 / 40); 999 draws tell it within four of 1/√(2·999).
    const error = Math.sqrt((1600 - 1) / 12 / 40);
    expect(Math.abs(result.standardError / error - 1)).toBeLessThan(4 / Math.sqrt(2 * 999));
    expect(Math.abs((result.upper - result.lower) / (2 * 1.96 * error) - 1)).toBeLessThan(0.15);
  });

  test("is the same from the same stream, and wider for more confidence", () => {
    const p90 = (sample: readonly number[]) => samplePercentile(sample, 0.9, 8);
    const once = (confidence: number) =>
      bootstrapInterval(torsos, p90, { random: createRandom(3), confidence, replicates: 200 });
    expect(once(0.9)).toEqual(once(0.9));
    expect(once(0.99).upper - once(0.99).lower).toBeGreaterThan(once(0.8).upper - once(0.8).lower);
  });

  test("draws people with their weights", () => {
    const weights = torsos.map((_, i) => (i < 20 ? 0 : 1));
    const weighted = (sample: readonly number[], own?: readonly number[]) =>
      weightedSummary(sample, own ?? []).mean;
    const result = bootstrapInterval(torsos, weighted, { random: createRandom(5), weights, replicates: 100 });
    expect(result.value).toBe(409.5);
    expect(result.lower).toBeGreaterThan(400);
  });

  test("refuses figures that are none", () => {
    const random = createRandom(1);
    expect(() => bootstrapInterval(torsos, () => Number.NaN, { random })).toThrow(InvalidArgumentError);
    expect(() => bootstrapInterval([1], mean, { random })).toThrow(InvalidArgumentError);
    expect(() => bootstrapInterval(torsos, mean, { random, replicates: 5 })).toThrow(InvalidArgumentError);
    expect(() => bootstrapInterval(torsos, mean, { random, confidence: 1 })).toThrow(InvalidArgumentError);
  });
});
