import { InvalidArgumentError } from "@tapewise/outcome";
import { lognormalDistribution, samplePercentile, truePercentiles } from "@tapewise/population";
import { createRandom, normalQuantile } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("truePercentiles", () => {
  test("of a normal shape are mean + z σb, with the delta method's error", () => {
    const [p5, p50] = truePercentiles({ values: [390, 400, 410], errorSd: 6 }, [0.05, 0.5], {
      shape: "normal",
    });
    const z = normalQuantile(0.05);
    expect(p5?.value).toBeCloseTo(400 + z * 8, 10);
    expect(p5?.standardError).toBeCloseTo(Math.hypot(10 / Math.sqrt(3), z * 6.25), 10);
    expect(p50?.value).toBe(400);
    expect((p50?.upper ?? 0) - 400).toBeCloseTo((1.959963984540054 * 10) / Math.sqrt(3), 9);
    expect(400 - (p50?.lower ?? 0)).toBeCloseTo((1.959963984540054 * 10) / Math.sqrt(3), 9);
  });

  test("of the observed shape draw each person towards the mean", () => {
    // σb = 8 of an observed 10: 390 and 410 become 392 and 408.
    const options = { shape: "observed" as const, random: createRandom(1), replicates: 20, type: 7 as const };
    const found = truePercentiles({ values: [390, 400, 410], errorSd: 6 }, [0, 0.25, 1], options);
    expect(found.map(({ value }) => value)).toEqual([
      expect.closeTo(392, 9),
      expect.closeTo(396, 9),
      expect.closeTo(408, 9),
    ]);
  });

  test("are all the mean where the error explains the spread", () => {
    const values = { values: [399, 400, 401], errorSd: 5 };
    const [p95] = truePercentiles(values, [0.95], { shape: "normal" });
    expect(p95).toEqual({ share: 0.95, value: 400 });
    const options = { shape: "observed" as const, random: createRandom(1), replicates: 20 };
    expect(truePercentiles(values, [0.95], options)[0]?.value).toBe(400);
  });

  test("come out the same from the same stream", () => {
    const readings = {
      people: [
        [400, 404],
        [420, 416],
        [440, 440],
        [398, 410],
      ],
    };
    const once = () =>
      truePercentiles(readings, [0.1, 0.9], { shape: "observed", random: createRandom(6), replicates: 30 });
    expect(once()).toEqual(once());
  });

  // 60 surveys of 250 people: normal torsos with sd 25, two readings with an error of 12 each.
  test("remove the bias that error of reading puts into outer percentiles", () => {
    const truth = 430 + 25 * normalQuantile(0.95);
    const [plain, fromRepeats, stated, covered] = [[], [], [], []] as number[][];
    for (let survey = 0; survey < 60; survey += 1) {
      const random = createRandom(90).fork(survey);
      const people = Array.from({ length: 250 }, () => {
        const own = 430 + 25 * random.normal();
        return [own + 12 * random.normal(), own + 12 * random.normal()];
      });
      const first = people.map(([reading = 0]) => reading);
      plain?.push(samplePercentile(first, 0.95, 8));
      const [repeats] = truePercentiles({ people }, [0.95], { shape: "normal" });
      fromRepeats?.push(repeats?.value ?? 0);
      covered?.push((repeats?.lower ?? 0) <= truth && truth <= (repeats?.upper ?? 0) ? 1 : 0);
      const [known] = truePercentiles({ values: first, errorSd: 12 }, [0.95], { shape: "normal" });
      stated?.push(known?.value ?? 0);
    }
    const bias = (found: number[] = []) => found.reduce((sum, each) => sum + each, 0) / found.length - truth;
    // √(25² + 12²) = 27.73 instead of 25: 4.5 mm too far out at 1.645 standard deviations.
    expect(bias(plain)).toBeGreaterThan(3);
    // Four standard errors of the mean of 60: a percentile strays by about 2.8 mm from survey to survey.
    expect(Math.abs(bias(fromRepeats))).toBeLessThan(4 * (2.8 / Math.sqrt(60)));
    expect(Math.abs(bias(stated))).toBeLessThan(4 * (3 / Math.sqrt(60)));
    const share = (covered ?? []).reduce((sum, each) => sum + each, 0) / 60;
    expect(share).toBeGreaterThan(0.95 - 4 * Math.sqrt((0.95 * 0.05) / 60));
  });

  test("remove it from a skewed shape too, as nearly as the mean shape allows", () => {
    const girth = lognormalDistribution({ meanLog: Math.log(850), sdLog: 0.12 });
    const truth = girth.quantile(0.95);
    const [plain, shrunk] = [[], []] as number[][];
    for (let survey = 0; survey < 20; survey += 1) {
      const random = createRandom(91).fork(survey);
      const own = Array.from({ length: 400 }, () => girth.sample(random));
      const values = own.map((each) => each + 60 * random.normal());
      plain?.push(samplePercentile(values, 0.95, 8));
      const options = { shape: "observed" as const, random, replicates: 20 };
      shrunk?.push(truePercentiles({ values, errorSd: 60 }, [0.95], options)[0]?.value ?? 0);
    }
    const bias = (found: number[] = []) => found.reduce((sum, each) => sum + each, 0) / found.length - truth;
    // Readings spread by √(103² + 60²) = 119 instead of 103 mm.
    expect(bias(plain)).toBeGreaterThan(15);
    expect(Math.abs(bias(shrunk))).toBeLessThan(bias(plain) / 2);
  });

  test("refuse what they cannot use", () => {
    const readings = { values: [390, 400, 410], errorSd: 6 };
    expect(() => truePercentiles(readings, [1.5], { shape: "normal" })).toThrow(InvalidArgumentError);
    expect(() => truePercentiles(readings, [1], { shape: "normal" })).toThrow(InvalidArgumentError);
    expect(() => truePercentiles(readings, [0.5], { shape: "normal", confidence: 1 })).toThrow(
      InvalidArgumentError,
    );
    const options = { shape: "observed" as const, random: createRandom(1), replicates: 3 };
    expect(() => truePercentiles(readings, [0.5], options)).toThrow(InvalidArgumentError);
    // @ts-expect-error: no such shape
    expect(() => truePercentiles(readings, [0.5], { shape: "square" })).toThrow(InvalidArgumentError);
  });
});
