import { InvalidArgumentError } from "@tapewise/outcome";
import {
  andersonDarling,
  andersonDarlingCriticalValues,
  fitDistribution,
  normalDistribution,
} from "@tapewise/population";
import { createRandom, normalCdf, normalUpperTail } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const torsos = [402, 388, 415, 397, 421, 409, 393, 404, 411, 400];

describe("andersonDarling", () => {
  test("is the formula, with the deviation on n − 1", () => {
    const mean = 404;
    const sd = Math.sqrt(torsos.reduce((sum, torso) => sum + (torso - mean) ** 2, 0) / 9);
    const z = torsos.map((torso) => (torso - mean) / sd).sort((a, b) => a - b);
    const sum = z.reduce(
      (all, each, i) =>
        all + (2 * i + 1) * (Math.log(normalCdf(each)) + Math.log(normalUpperTail(z[9 - i] ?? 0))),
      0,
    );
    const test = andersonDarling(torsos, fitDistribution("normal", torsos));
    expect(test.statistic).toBeCloseTo(-10 - sum / 10, 10);
    expect(test.adjusted).toBeCloseTo(test.statistic * (1 + 0.075 + 0.0225), 12);
    expect([test.basis, test.people]).toEqual(["table", 10]);
  });

  test("passes a sample of normal quantiles and fails one of exponential ones", () => {
    const normal = normalDistribution({ mean: 400, sd: 20 });
    const straight = Array.from({ length: 200 }, (_, i) => normal.quantile((i + 0.5) / 200));
    const bent = Array.from({ length: 200 }, (_, i) => -20 * Math.log(1 - (i + 0.5) / 200));
    expect(andersonDarling(straight, fitDistribution("normal", straight)).pValue).toBeGreaterThan(0.99);
    expect(andersonDarling(bent, fitDistribution("normal", bent)).pValue).toBeLessThan(1e-6);
    const lognormal = straight.map((x) => Math.exp(x / 100));
    expect(andersonDarling(lognormal, fitDistribution("lognormal", lognormal)).pValue).toBeGreaterThan(0.99);
  });

  test("rejects one normal sample in ten at the level of ten in a hundred", () => {
    const level = andersonDarlingCriticalValues[0];
    let rejected = 0;
    for (let i = 0; i < 400; i += 1) {
      const random = createRandom(77).fork(i);
      const sample = Array.from({ length: 30 }, () => random.normal());
      const { adjusted } = andersonDarling(sample, fitDistribution("normal", sample));
      if (adjusted > (level?.value ?? 0)) rejected += 1;
    }
    // Four standard errors of a share of 0.1.
    expect(Math.abs(rejected / 400 - 0.1)).toBeLessThan(4 * Math.sqrt(0.09 / 400));
  });

  test("simulates where there is no table, the same each time", () => {
    const girths = Array.from({ length: 60 }, (_, i) => 750 + 3 * i + 0.03 * i * i);
    const fit = fitDistribution("skew-normal", girths);
    const once = () => andersonDarling(girths, fit, { random: createRandom(4), replicates: 19 });
    const test = once();
    expect(test.basis).toBe("simulation");
    expect(once()).toEqual(test);
    // (1 + worse) / 20
    expect(test.pValue * 20).toBeCloseTo(Math.round(test.pValue * 20), 12);
    expect(test.pValue).toBeGreaterThanOrEqual(1 / 20);
  });

  test("refuses to simulate without a stream, and small samples", () => {
    const girths = Array.from({ length: 20 }, (_, i) => 750 + 3 * i + 0.2 * i * i);
    const fit = fitDistribution("skew-normal", girths);
    expect(() => andersonDarling(girths, fit)).toThrow(InvalidArgumentError);
    expect(() => andersonDarling(girths, fit, { random: createRandom(1), replicates: 0 })).toThrow(
      InvalidArgumentError,
    );
    expect(() => andersonDarling([1, 2, 3, 4, 5, 6, 7], fit)).toThrow(InvalidArgumentError);
  });
});
