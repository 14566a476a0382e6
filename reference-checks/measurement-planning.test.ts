import {
  chanceOfRightSize,
  subjectsForIccTest,
  subjectsForIccWidth,
  subjectsForLimits,
  subjectsForTem,
  temBounds,
} from "@tapewise/measurement";
import { fQuantile, fUpperTail } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { type Against, against, type Reference } from "./table/against.ts";

const plans = (name: string, source: string, origin: Reference["origin"]): Against =>
  against({ of: `measurement.${name}`, source, origin, why: "whole people" });

describe("subjects for the width of an interval of the ICC (Bonett 2002)", () => {
  test.each([
    // Bonett's own example, 19.2 before rounding up; read second-hand.
    { icc: 0.85, repeats: 4, width: 0.2, subjects: 20 },
    // 50.8, and 5 · 0.8 more, as he advises for two readings: printed 51 and 55 by an online calculator (P. ten Klooster).
    { icc: 0.8, repeats: 2, width: 0.2, subjects: 55 },
    // R package presize 0.3.11, prec_icc, read second-hand.
    { icc: 0.75, repeats: 2, width: 0.2, subjects: 79 },
    { icc: 0.75, repeats: 3, width: 0.2, subjects: 52 },
    // The same package gives the width 0.3233102 for 50 subjects.
    { icc: 0.5, repeats: 3, width: 0.32332, subjects: 50 },
    { icc: 0.5, repeats: 3, width: 0.3233, subjects: 51 },
  ])("ICC $icc, $repeats readings, width $width: $subjects", ({ subjects, ...plan }) => {
    plans("subjectsForIccWidth", "Bonett 2002; R package presize", "printed (second-hand)").same(
      subjectsForIccWidth(plan),
      subjects,
    );
  });
});

describe("subjects to show that the ICC is above a least one (Walter, Eliasziw & Donner 1998)", () => {
  test.each([
    // R package ICC.Sample.Size 1.1, calculateIccSampleSize, read second-hand.
    { least: 0.5, expected: 0.75, repeats: 3, subjects: 24 },
    { least: 0.5, expected: 0.75, repeats: 2, subjects: 36 },
    { least: 0, expected: 0.75, repeats: 2, power: 0.95, sides: 2 as const, subjects: 15 },
    // The paper's table, from memory.
    { least: 0.6, expected: 0.8, repeats: 2, subjects: 39 },
    // 26.066, 16.516 and 17.896 by the formula, recomputed with mpmath 1.3.
    { least: 0.6, expected: 0.8, repeats: 3, subjects: 27 },
    { least: 0.6, expected: 0.8, repeats: 10, subjects: 17 },
    { least: 0.7, expected: 0.9, repeats: 2, subjects: 18 },
  ])("from $least to $expected with $repeats readings: $subjects", ({ subjects, ...plan }) => {
    plans(
      "subjectsForIccTest",
      "Walter, Eliasziw & Donner 1998; R package ICC.Sample.Size",
      "printed (second-hand, from memory)",
    ).same(subjectsForIccTest(plan), subjects);
  });
});

test.each([
  // The power by the F distribution itself, as the paper has it before its approximation; recomputed with SciPy 1.17.
  { least: 0.5, expected: 0.75, repeats: 3, power: 0.8192197784566398 },
  { least: 0.5, expected: 0.75, repeats: 2, power: 0.8026057052376973 },
  { least: 0.6, expected: 0.8, repeats: 2, power: 0.8009140596431356 },
])("the test from $least to $expected with $repeats readings has the power $power", ({ power, ...plan }) => {
  const subjects = subjectsForIccTest(plan);
  const odds = (icc: number) => 1 + (plan.repeats * icc) / (1 - icc);
  const [df1, df2] = [subjects - 1, subjects * (plan.repeats - 1)];
  const critical = fQuantile(0.95, df1, df2);
  const exact = fUpperTail((critical * odds(plan.least)) / odds(plan.expected), df1, df2);
  expect(Math.abs(exact - power)).toBeLessThan(1e-10);
  expect(exact).toBeGreaterThanOrEqual(0.8);
});

describe("the interval of a technical error of measurement (chi-square)", () => {
  // Recomputed with R 4.2.2: sqrt(df / qchisq(c(0.975, 0.025), df)).
  test.each([
    [10, 2, 0.6987170441634244, 1.7549335474133558],
    [20, 2, 0.765059137537121, 1.444069489985432],
    [10, 3, 0.765059137537121, 1.444069489985432],
    [100, 2, 0.8785419906858473, 1.1607371535319833],
  ])("%i subjects read %i times: %f to %f times the one found", (subjects, repeats, lower, upper) => {
    const bounds = temBounds(subjects, repeats, 0.95);
    const bound = against({
      of: "measurement.temBounds",
      source: "chi-square interval of a standard deviation",
      origin: "recomputed with R 4.2.2",
      why: "some hundred roundings of a quantile",
    });
    bound.relative(bounds.lower, lower, 1e-13);
    bound.relative(bounds.upper, upper, 1e-13);
  });

  // Recomputed with R 4.2.2 by counting up.
  test.each([
    [2, 0.1, 233],
    [2, 0.2, 69],
    [2, 0.5, 17],
    [3, 0.2, 35],
    [2, 0.75, 11],
  ])("%i readings each, no more than %f above: %i subjects", (repeats, precision, subjects) => {
    plans("subjectsForTem", "chi-square interval of a standard deviation", "recomputed with R 4.2.2").same(
      subjectsForTem({ repeats, precision }),
      subjects,
    );
  });

  test("close to Bland's rule 1.96²/(2p²(K − 1)) for a good precision (from memory)", () => {
    // 1.96² / (2 · 0.02²) = 4802; the upper end of the exact interval is the farther one.
    const exact = subjectsForTem({ repeats: 2, precision: 0.02 });
    expect(exact / 4802).toBeGreaterThan(1);
    expect(exact / 4802).toBeLessThan(1.05);
  });
});

test("limits of agreement: 100 subjects give ±0.34 s, 200 give ±0.24 s (J. M. Bland's page on sample sizes, from memory)", () => {
  // 1.96 √(3/100) = 0.3395, 1.96 √(3/200) = 0.2400
  const limits = plans("subjectsForLimits", "J. M. Bland's page on sample sizes", "printed (from memory)");
  limits.same(subjectsForLimits({ differenceSdMm: 1, halfWidthMm: 0.34 }), 100);
  limits.same(subjectsForLimits({ differenceSdMm: 1, halfWidthMm: 0.2401 }), 200);
});

describe("the chance of the right size", () => {
  const open = Number.POSITIVE_INFINITY;
  const touching = [
    { from: 380, to: 430 },
    { from: 430, to: 480 },
    { from: 480, to: 530 },
  ];
  const overlapAndGap = [
    { from: 380, to: 435 },
    { from: 425, to: 480 },
    { from: 490, to: 530 },
  ];
  const twoOpen = [
    { from: -open, to: 435 },
    { from: 425, to: open },
  ];
  // No publication: the mean over the length of the chance that its measured value is picked, ∫ φ(l) P(picked | l) dl,
  // integrated with mpmath 1.3 (30 digits). Mean, standard deviation, uncertainty in mm.
  test.each([
    [touching, 455, 25, 5, "0.92009007026953458948"],
    [touching, 455, 25, 10, "0.84329170087000201069"],
    [touching, 432, 12, 4.5, "0.88715887154496347264"],
    [overlapAndGap, 455, 25, 5, "0.90475490854071220413"],
    [overlapAndGap, 455, 25, 10, "0.84956167613163553996"],
    [overlapAndGap, 432, 12, 4.5, "0.98323782097023525278"],
    [twoOpen, 455, 25, 5, "0.99194338805863817752"],
    [twoOpen, 455, 25, 10, "0.96193197663747993555"],
    [twoOpen, 432, 12, 4.5, "0.98328388926876302567"],
  ])("%j, N(%f, %f²), u = %f", (sizes, meanMm, sdMm, uncertaintyMm, chance) => {
    against({
      of: "measurement.chanceOfRightSize",
      source: "∫ φ(l) P(picked | l) dl by quadrature",
      origin: "recomputed with mpmath 1.3",
      why: "tens of roundings of a probability",
    }).absolute(chanceOfRightSize(sizes, { meanMm, sdMm }, uncertaintyMm), chance, 1e-14);
  });
});
