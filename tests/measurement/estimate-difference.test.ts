import { type Estimate, estimateDifference, parseEstimate, readingsFor } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { parseLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";

/** A height from as many equal readings as are asked for, with lasting and repeated errors as stated. */
function height(
  dimension: "cervicale-height" | "iliac-crest-height",
  text: string,
  error: { readonly biasMm: number; readonly repeatMm: number },
  count = 1,
): Estimate {
  return parseEstimate({
    dimension,
    readings: Array.from({ length: count }, () => parseLength(text)),
    error: { ...error, resolutionMm: 0 },
  });
}

describe("estimateDifference", () => {
  const cervicale = height("cervicale-height", "144 cm", { biasMm: 3, repeatMm: 0 });
  const crest = height("iliac-crest-height", "101.5 cm", { biasMm: 4, repeatMm: 0 });

  test("takes one mean from the other, and adds the variances (GUM 5.1.2)", () => {
    const torso = estimateDifference("torso-length", cervicale, crest);
    expect(torso.dimension).toBe("torso-length");
    // 1440 mm - 1015 mm, and the root of 3² + 4².
    expect(torso.mm).toBe(425);
    expect(torso.uncertaintyMm).toBe(5);
    expect(torso.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    // 1.959964 standard uncertainties (95 % point of the normal distribution, NIST/SEMATECH e-Handbook 1.3.6.7.1, from memory).
    expect(torso.coverage.factor).toBeCloseTo(1.959964, 6);
    expect(torso.coverage.lowerMm).toBeCloseTo(425 - 5 * 1.959964, 4);
    expect(torso.coverage.upperMm).toBeCloseTo(425 + 5 * 1.959964, 4);
  });

  test("lists the readings and the causes of both, with shares of the whole", () => {
    const torso = estimateDifference("torso-length", cervicale, crest);
    expect(torso.readings.map((reading) => reading.mm)).toEqual([1440, 1015]);
    // Both errors are stated biases: one line of 5 mm that is all of it.
    expect(torso.budget).toMatchObject([{ source: "stated-bias", uncertaintyMm: 5, averagesOut: false }]);
    expect(torso.budget[0]?.share).toBeCloseTo(1, 12);
    expect(torso.lastingMm).toBe(5);
  });

  test("what averages out does so with the readings of both together", () => {
    const above = height("cervicale-height", "144 cm", { biasMm: 0, repeatMm: 6 }, 4);
    const below = height("iliac-crest-height", "101.5 cm", { biasMm: 0, repeatMm: 8 }, 4);
    const torso = estimateDifference("torso-length", above, below);
    // 6²/4 + 8²/4 = 25.
    expect(torso.uncertaintyMm).toBeCloseTo(5, 12);
    // u² = lasting² + perReading²/n with n = 8 readings: perReading² = 8 × 25.
    expect(torso.perReadingMm).toBeCloseTo(Math.sqrt(200), 12);
    // Half the uncertainty takes four times as many readings: 32.
    expect(readingsFor(torso, 2.5)).toBe(32);
  });

  test("has effective degrees of freedom by Welch and Satterthwaite (GUM G.2b)", () => {
    const sure: Estimate = { ...cervicale, uncertaintyMm: 3, degreesOfFreedom: 9 };
    const less: Estimate = { ...crest, uncertaintyMm: 4, degreesOfFreedom: 16 };
    // 5⁴ / (3⁴/9 + 4⁴/16) = 625 / 25.
    expect(estimateDifference("torso-length", sure, less).degreesOfFreedom).toBeCloseTo(25, 10);
  });

  test("names every condition that either had to assume", () => {
    const assuming = parseEstimate({ dimension: "iliac-crest-height", readings: [parseLength("101.5 cm")] });
    const known = parseEstimate({
      dimension: "cervicale-height",
      readings: [parseLength("144 cm")],
      conditions: { tool: "tape", measuredBy: "self", landmarksFoundAfresh: false },
    });
    expect(estimateDifference("torso-length", known, assuming).conditions.assumed).toEqual([
      "tool",
      "measured-by",
      "landmarks-found-afresh",
    ]);
  });

  test("refuses a difference that is none, and two probabilities", () => {
    expect(() => estimateDifference("torso-length", crest, cervicale)).toThrow(InvalidArgumentError);
    expect(() => estimateDifference("torso-length", crest, crest)).toThrow(InvalidArgumentError);
    const other: Estimate = { ...crest, coverage: { ...crest.coverage, probability: 0.9 } };
    expect(() => estimateDifference("torso-length", cervicale, other)).toThrow(InvalidArgumentError);
  });
});
