import {
  blandAltman,
  blandAltmanRepeats,
  minimalDetectableChange,
  repeatabilityCoefficient,
} from "@tapewise/measurement";
import { beforeAll, describe, expect, test } from "vitest";
import { cardiac, pefr } from "./measurement-agreement-figures.ts";
import { type Against, against } from "./table/against.ts";

const { printed, recomputed } = pefr;
const wright = pefr.wright.map(([first]) => first);
const mini = pefr.mini.map(([first]) => first);

/** Relative, a few tens of roundings. */
function expectClose(actual: number | undefined, reference: string, tolerance = 1e-13): void {
  against({ ...current, origin: "recomputed with mpmath 1.3 and R 4.2.2", why: TENS }).relative(
    actual,
    reference,
    tolerance,
  );
}
const TENS = "a few tens of roundings; R's lm and ten printed digits where so few are at hand";
let current = { of: "measurement.blandAltman", source: "Bland & Altman 1986 and 1999, peak flow" };
const onto = (name: string, source: string): void => {
  beforeAll(() => {
    current = { of: `measurement.${name}`, source };
  });
};
const printedIn = (name: string): Against =>
  against({
    of: `measurement.${name}`,
    source: "Bland & Altman 1986, peak flow",
    origin: "printed (from memory)",
    why: "the decimals that are printed",
  });

describe("Bland & Altman (1986): first readings of the two meters, 2 standard deviations", () => {
  const result = blandAltman(wright, mini, { multiplier: 2, method: "approximate-1986" });

  test("bias and standard deviation of the differences", () => {
    printedIn("blandAltman").printed(result.bias.value, printed.bias);
    printedIn("blandAltman").printed(result.differenceSd, printed.differenceSd);
    expectClose(result.bias.value, recomputed.bias);
    expectClose(result.differenceSd, recomputed.differenceSd);
  });

  test("limits of agreement; the printed ones come of rounded figures", () => {
    // −2.1 ± 2 × 38.8, as the paper works it out.
    expect([(-2.1 - 2 * 38.8).toFixed(1), (-2.1 + 2 * 38.8).toFixed(1)]).toEqual(printed.limits);
    expectClose(result.lowerLimit.value, recomputed.limits2[0]);
    expectClose(result.upperLimit.value, recomputed.limits2[1]);
    expect(Math.abs(result.lowerLimit.value - Number(printed.limits[0]))).toBeLessThan(0.1);
    expect(Math.abs(result.upperLimit.value - Number(printed.limits[1]))).toBeLessThan(0.1);
  });

  test("interval of the bias", () => {
    printedIn("blandAltman").printed(result.biasError, printed.biasError);
    expectClose(result.biasError, recomputed.biasError);
    expectClose(result.bias.lower, recomputed.biasInterval[0]);
    expectClose(result.bias.upper, recomputed.biasInterval[1]);
    printedIn("blandAltman").printed(result.bias.lower, printed.biasInterval[0]);
    printedIn("blandAltman").printed(result.bias.upper, printed.biasInterval[1]);
  });

  test("intervals of the limits, ± t √(3 s²/n)", () => {
    expectClose(result.lowerLimit.lower, recomputed.lowerInterval[0]);
    expectClose(result.lowerLimit.upper, recomputed.lowerInterval[1]);
    expectClose(result.upperLimit.lower, recomputed.upperInterval[0]);
    expectClose(result.upperLimit.upper, recomputed.upperInterval[1]);
    const ends = [
      result.lowerLimit.lower,
      result.lowerLimit.upper,
      result.upperLimit.lower,
      result.upperLimit.upper,
    ];
    [...printed.lowerInterval, ...printed.upperInterval].forEach((end, i) => {
      // The paper goes on from its rounded limits and a standard error of 16.3.
      expect(Math.abs((ends[i] ?? 0) - Number(end))).toBeLessThan(0.25);
    });
  });
});

describe("the same with 1.96 standard deviations", () => {
  test("limits, and their intervals by Bland & Altman (1999)", () => {
    const { lowerLimit, upperLimit } = blandAltman(wright, mini, { method: "approximate-1999" });
    expectClose(lowerLimit.value, recomputed.limits196[0]);
    expectClose(upperLimit.value, recomputed.limits196[1]);
    // t of 16 degrees of freedom at 0.975, tabled as 2.120, recomputed with mpmath.
    const reach = Number("2.1199052992212546745") * Number(recomputed.limitError1999);
    expectClose(upperLimit.upper - upperLimit.value, `${reach}`);
    expectClose(lowerLimit.value - lowerLimit.lower, `${reach}`);
  });

  test.each([
    [1.96, recomputed.noncentral196],
    [2, recomputed.noncentral2],
  ] as const)("exact intervals for %f standard deviations, from noncentral t", (multiplier, [near, far]) => {
    const { bias, differenceSd, lowerLimit, upperLimit } = blandAltman(wright, mini, { multiplier });
    const scale = differenceSd / Math.sqrt(17);
    expectClose((upperLimit.lower - bias.value) / scale, near);
    expectClose((upperLimit.upper - bias.value) / scale, far);
    expectClose((bias.value - lowerLimit.upper) / scale, near);
    expectClose((bias.value - lowerLimit.lower) / scale, far);
  });

  test("proportional bias, as R's lm has it", () => {
    const { slope } = blandAltman(wright, mini);
    const { value, standardError, intercept, pValue, interval, residualSd } = recomputed.slope;
    expectClose(slope?.value, value, 1e-12);
    expectClose(slope?.standardError, standardError, 1e-12);
    expectClose(slope?.intercept, intercept, 1e-12);
    expectClose(slope?.pValue, pValue, 1e-12);
    expectClose(slope?.lower, interval[0], 1e-12);
    expectClose(slope?.upper, interval[1], 1e-12);
    expectClose(slope?.residualSd, residualSd, 1e-12);
  });
});

describe("repeatability of the Wright meter", () => {
  onto("repeatabilityCoefficient", "Bland & Altman 1986, peak flow");
  const { wright: figures } = recomputed;

  test.each([
    [2, "zero", figures.aboutZero2],
    [2, "mean", figures.aboutMean2],
    [1.96, "zero", figures.aboutZero196],
  ] as const)("%f standard deviations about %s", (multiplier, about, reference) => {
    expectClose(repeatabilityCoefficient(pefr.wright, { multiplier, about }).coefficient.value, reference);
  });

  test("standard deviation within subjects, the technical error of measurement", () => {
    expectClose(repeatabilityCoefficient(pefr.wright).withinSd, figures.withinSd);
    // 1.96 √2 s_w and the exact normal quantile for 1.96 part by 2 in 100 000.
    const change = minimalDetectableChange(Number(figures.withinSd));
    against({
      of: "measurement.minimalDetectableChange",
      source: "Bland & Altman 1986, peak flow",
      origin: "recomputed with mpmath 1.3",
      why: "1.96 stands there for the normal quantile",
    }).relative(change, figures.aboutZero196, 2e-5);
  });

  test.each(["wright", "mini"] as const)(
    "as printed for the %s meter, from a rounded standard deviation",
    (meter) => {
      const { coefficient } = repeatabilityCoefficient(pefr[meter], { multiplier: 2 });
      expect((2 * Number((coefficient.value / 2).toFixed(1))).toFixed(1)).toBe(printed.repeatability[meter]);
    },
  );
});

describe("Bland & Altman (1999), Table 4: several readings of each subject", () => {
  onto("blandAltmanRepeats", "Bland & Altman 1999, Table 4");
  const ends = ["bias", "lowerLimit", "upperLimit"] as const;
  const intervals = {
    bias: "biasInterval",
    lowerLimit: "lowerInterval",
    upperLimit: "upperInterval",
  } as const;
  /** The references have ten digits and more. */
  const TEN = 1e-9;

  test("constant true value", () => {
    const figures = cardiac.constant;
    const result = blandAltmanRepeats(cardiac.subjects, { trueValue: "constant" });
    result.withinVariances?.forEach((variance, i) => {
      expect(variance?.toFixed(4)).toBe(cardiac.printed.withinVariances[i]);
      expectClose(variance, figures.withinVariances[i] ?? "", TEN);
    });
    expectClose(result.differenceSd, figures.differenceSd, TEN);
    expectClose(result.bias.value, figures.bias, TEN);
    expectClose(result.lowerLimit.value, figures.limits[0], TEN);
    expectClose(result.upperLimit.value, figures.limits[1], TEN);
    for (const end of ends) {
      expectClose(result[end].lower, figures[intervals[end]][0], TEN);
      expectClose(result[end].upper, figures[intervals[end]][1], TEN);
    }
  });

  test("varying true value", () => {
    const figures = cardiac.varying;
    const result = blandAltmanRepeats(cardiac.subjects, { trueValue: "varying" });
    result.differenceVariances?.forEach((variance, i) => {
      expectClose(variance, figures.differenceVariances[i] ?? "", TEN);
    });
    expectClose(result.differenceSd, figures.differenceSd, TEN);
    expectClose(result.bias.value, figures.bias, TEN);
    expectClose(result.lowerLimit.value, figures.limits[0], TEN);
    expectClose(result.upperLimit.value, figures.limits[1], TEN);
    for (const end of ends) {
      expectClose(result[end].lower, figures[intervals[end]][0], TEN);
      expectClose(result[end].upper, figures[intervals[end]][1], TEN);
    }
  });
});
