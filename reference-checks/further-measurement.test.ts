import {
  anticipateError,
  anticipateUncertainty,
  anticipateUnchecked,
  averagingTable,
  cochranTest,
  compareNextWays,
  createStudy,
  differenceOfHeights,
  drawReadings,
  estimateDifference,
  expectedMeanError,
  histogramOf,
  lessonErrorFromDefaults,
  numericalTolerance,
  observerAllowances,
  parseEstimate,
  parseStudy,
  planReadings,
  planReadingsForChoice,
  readingsFor,
  resampleAveraging,
  runningMean,
  safeCompareAllowance,
  safeDigitPreference,
  safeEstimate,
  safeMeasurerAgreement,
  safeRepeatTrend,
  safeStudyIcc,
  simulateAveraging,
  standardErrorOfMeasurement,
  summariseStudy,
  sumOfJoined,
  varianceInterval,
} from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { millimetres, parseLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import further from "./further-values.json" with { type: "json" };
import { pefr, shroutFleiss } from "./measurement-agreement-figures.ts";
import { typeA } from "./measurement-figures.ts";
import { type Against, against, type Reference } from "./table/against.ts";

const { measurement } = further;
const origin = further.origin as Reference["origin"];
const row = (name: string, source: string, why: string, from: Reference["origin"] = origin): Against =>
  against({ of: `measurement.${name}`, source, origin: from, why });
const GUM = "GUM (JCGM 100:2008), 4.4 and 5.1.2, with the table of defaults typed in again";
const TENS = "tens of roundings";
const BY_HAND = "worked by hand";

describe("what readings to come will be worth, from the table of defaults by the GUM", () => {
  test.each(measurement.anticipated)(
    "$count by $measuredBy with a $tool in steps of $stepMm mm, afresh $landmarksFoundAfresh",
    (one) => {
      const { tool, measuredBy, landmarksFoundAfresh, count, stepMm } = one;
      const reading = {
        dimension: "torso-length",
        lengthMm: 430,
        stepMm,
        conditions: { tool, measuredBy, landmarksFoundAfresh } as {
          readonly tool: "tape";
          readonly measuredBy: "self";
          readonly landmarksFoundAfresh: boolean;
        },
      } as const;
      row("anticipateUncertainty", GUM, TENS).relative(
        anticipateUncertainty({ ...reading, count }),
        one.uncertaintyMm,
        1e-13,
      );
      const conditions = reading.conditions;
      row("anticipateUnchecked", GUM, TENS).relative(
        anticipateUnchecked({ ...reading, conditions, count }),
        one.uncertaintyMm,
        1e-13,
      );
      const error = anticipateError(reading);
      row("anticipateError", GUM, TENS).relative(error.perReadingMm, one.perReadingMm, 1e-13);
      row("anticipateError", GUM, TENS).relative(error.lastingMm, one.lastingMm, 1e-13);
      const [line] = averagingTable(error, [count]);
      row("averagingTable", GUM, TENS).relative(line?.uncertaintyMm, one.uncertaintyMm, 1e-13);
      const lesson = lessonErrorFromDefaults(reading);
      const withRounding = expectedMeanError(lesson, count);
      row("lessonErrorFromDefaults", GUM, TENS).relative(withRounding.sdMm, one.uncertaintyMm, 1e-13);
      if (Number(one.lastingMm) < Number(one.uncertaintyMm)) {
        row("readingsFor", GUM, "whole readings").same(readingsFor(error, Number(one.uncertaintyMm)), count);
      }
    },
  );

  test("another kind of readings beside the first: two results that share nothing, GUM 5.2.2 with c = 0", () => {
    // Three readings by oneself, then three by a helper: other hands, the same tape.
    const find = (by: string) =>
      measurement.anticipated.find(
        (one) =>
          one.measuredBy === by &&
          one.tool === "tape" &&
          one.count === 3 &&
          one.stepMm === 1 &&
          !one.landmarksFoundAfresh,
      );
    const [a, b] = [Number(find("self")?.uncertaintyMm) ** 2, Number(find("helper")?.uncertaintyMm) ** 2];
    // Both share the scale of the tape: c = (0.003 · 430)²/3 = 0.5547.
    const c = (0.003 * 430) ** 2 / 3;
    const { ways } = compareNextWays(
      {
        dimension: "torso-length",
        lengthMm: 430,
        count: 3,
        stepMm: 1,
        conditions: { tool: "tape", measuredBy: "self" },
      },
      3,
    );
    const helper = ways.find(({ way, tool }) => way === "helper" && tool === "tape");
    row("compareNextWays", "GUM 5.2.2: (ab − c²)/(a + b − 2c)", TENS, BY_HAND).relative(
      helper?.uncertaintyMm,
      Math.sqrt((a * b - c * c) / (a + b - 2 * c)),
      1e-12,
    );
    const repeat = ways.find(({ way }) => way === "repeat");
    const six = measurement.anticipated.find(
      (one) =>
        one.measuredBy === "self" &&
        one.tool === "tape" &&
        one.count === 6 &&
        one.stepMm === 1 &&
        !one.landmarksFoundAfresh,
    );
    row("compareNextWays", GUM, TENS).relative(repeat?.uncertaintyMm, six?.uncertaintyMm ?? "", 1e-12);
  });
});

describe("planning", () => {
  test("readings for a standard and for an expanded uncertainty", () => {
    // 8²/(5² − 3²) = 4 readings leave √(9 + 64/4) = 5.
    const standard = planReadings({ perReadingMm: 8, lastingMm: 3 }, { standardMm: 5 });
    row("planReadings", "u² = l² + r²/n (GUM 4.2.3)", "whole readings", BY_HAND).same(
      standard.isReachable && [standard.count, standard.reachedMm],
      [4, 5],
      2,
    );
    const { target, count, reached } = measurement.expanded;
    const plan = planReadings(
      {
        perReadingMm: 8,
        lastingMm: 3,
        perReadingDegreesOfFreedom: 8,
        lastingDegreesOfFreedom: 8,
      },
      { expandedMm: target, probability: 0.95 },
    );
    expect(plan.isReachable && plan.count).toBe(count);
    row(
      "planReadings",
      "expanded by t at effective degrees of freedom (GUM G.4.1)",
      "SciPy's quantile of t",
    ).relative(plan.isReachable ? plan.reachedMm : undefined, reached, 1e-12);
  });

  test("readings for a chance of the right size", () => {
    const { sizes, chances, best } = measurement.plan;
    const chance = row("planReadingsForChoice", "∫ φ(l) P(picked | l) dl by quadrature", TENS);
    const plan = planReadingsForChoice({
      error: { perReadingMm: 8, lastingMm: 3 },
      sizes: sizes.map(([from = 0, to = 0]) => ({ from, to })),
      belief: { meanMm: 455, sdMm: 25 },
      wantedChance: 0.97,
    });
    chance.absolute(plan.chanceOfOne, chances[1], 1e-13);
    chance.absolute(plan.chanceAtBest, best, 1e-13);
    const enough = Object.entries(chances).find(([, value]) => Number(value) >= 0.97);
    chance.same(plan.count, Number(enough?.[0]));
    chance.absolute(plan.chance, enough?.[1] ?? "", 1e-13);
  });
});

test("the numerical tolerance of a standard uncertainty (JCGM 101:2008, 7.9.2, its examples)", () => {
  const jcgm = row(
    "numericalTolerance",
    "JCGM 101:2008, 7.9.2",
    "a power of ten, halved",
    "printed (from memory)",
  );
  jcgm.same(numericalTolerance(0.00035, 2), 0.000005);
  jcgm.same(numericalTolerance(0.00035, 1), 0.00005);
  jcgm.same(numericalTolerance(2, 1), 0.5);
});

describe("sums and differences of lengths", () => {
  test("heights 1440 ± 3 and 1015 ± 4 mm, scale 0.3 %", () => {
    // 3² + 4² = 25; half-width 0.003 · 425 = 1.275, rectangular: 1.275²/3 = 0.541875.
    const heights = differenceOfHeights(
      { mm: 1440, uncertaintyMm: 3 },
      { mm: 1015, uncertaintyMm: 4 },
      { scaleHalfWidth: 0.003 },
    );
    const hand = row("differenceOfHeights", "GUM 5.1.2, 5.2.2", TENS, BY_HAND);
    hand.same(heights.value, 425);
    hand.relative(heights.uncertainty, Math.sqrt(25.541875), 1e-14);
  });

  test("two pieces of a rule, one joint", () => {
    // 2 · 0.36 + 4 = 4.72; scale 0.001 · 436 = 0.436: 0.436²/3 = 0.063365333…
    const pieces = [300, 136].map((mm) => ({ mm, uncertaintyMm: 0.6 }));
    const sum = sumOfJoined(pieces, { jointMm: 2, scaleHalfWidth: 0.001 });
    const hand = row("sumOfJoined", "GUM 5.1.2, F.1.2.3", TENS, BY_HAND);
    hand.same(sum.value, 436);
    hand.relative(sum.uncertainty, Math.sqrt(4.72 + 0.436 ** 2 / 3), 1e-14);
  });

  test("a dimension that is the difference of two estimates", () => {
    const height = (dimension: "cervicale-height" | "iliac-crest-height", text: string, biasMm: number) =>
      parseEstimate({
        dimension,
        readings: [parseLength(text)],
        error: { biasMm, repeatMm: 0, resolutionMm: 0 },
      });
    const torso = estimateDifference(
      "torso-length",
      height("cervicale-height", "144 cm", 5),
      height("iliac-crest-height", "101.5 cm", 12),
    );
    // 5² + 12² = 13²
    const hand = row("estimateDifference", "GUM 5.1.2", TENS, BY_HAND);
    hand.same(torso.mm, 425);
    hand.relative(torso.uncertaintyMm, 13, 1e-15);
  });
});

test("an estimate of the twenty temperatures of GUM 4.4.3", () => {
  const readings = typeA.values.map((value) => parseLength(`${value} mm`));
  const outcome = safeEstimate({ dimension: "shoulder-length", readings });
  row("safeEstimate", "GUM (JCGM 100:2008), 4.4.3", TENS, "recomputed with mpmath 1.3").relative(
    unwrap(outcome).spread.sampleMm,
    typeA.recomputed.sd,
    1e-13,
  );
});

describe("lessons", () => {
  test("running mean, median and band", () => {
    const points = runningMean(measurement.readings);
    const numpy = row("runningMean", "mean, median and t band by NumPy and SciPy", "SciPy's quantile of t");
    measurement.running.forEach(({ mean, median, sd, lower, upper }, i) => {
      const point = points[i];
      numpy.relative(point?.meanMm, mean, 1e-14);
      numpy.relative(point?.medianMm, median, 1e-15);
      if (sd === null || lower === null || upper === null) return;
      numpy.relative(point?.sdMm, sd, 1e-12);
      numpy.relative(point?.lowerMm, lower, 1e-12);
      numpy.relative(point?.upperMm, upper, 1e-12);
    });
  });

  test("a histogram", () => {
    const { values, from, counts } = measurement.histogram;
    const bars = histogramOf(values, 5);
    const numpy = row("histogramOf", "NumPy's histogram", "whole numbers");
    numpy.same(bars[0]?.fromMm, from);
    numpy.same(
      bars.map(({ count }) => count),
      counts,
      counts.length,
    );
  });

  test.each(measurement.mean)("the mean of $count readings, bias $biasMm, step $stepMm", (one) => {
    const { biasMm, lastingMm, noiseMm, stepMm, count } = one;
    const error = {
      biasMm,
      lastingMm,
      noiseMm,
      stepMm,
      ...(one.slip ? { slip: { chance: 0.1, sizeMm: 20, direction: "longer" as const } } : {}),
    };
    const source = "moments of sums; the rounding of two readings by the theta series of its correlation";
    const expected = expectedMeanError(error, count);
    row("expectedMeanError", source, TENS).absolute(expected.biasMm, one.bias, 1e-14);
    row("expectedMeanError", source, TENS).relative(expected.sdMm, one.sd, 1e-13);

    // Drawn: a standard deviation of N series is known to 1/√2N, more where slips make the tail longer.
    const runs = 20_000;
    const [drawn] = simulateAveraging({ lengthMm: 431.7, error, counts: [count], runs, seed: 5 });
    const simulated = row(
      "simulateAveraging",
      source,
      "five standard errors of drawing, rounding at one length",
    );
    const slack = stepMm === 0 ? 0 : 0.5;
    simulated.absolute(drawn?.mean.biasMm, one.bias, (5 * Number(one.sd)) / Math.sqrt(runs) + slack);
    simulated.relative(drawn?.mean.sdMm, one.sd, 10 / Math.sqrt(2 * runs) + (stepMm === 0 ? 0 : 0.05));

    const { readingsMm } = drawReadings({
      lengthMm: 431.7,
      error: { ...error, lastingMm: 0 },
      count: runs,
      seed: 9,
    });
    const mean = readingsMm.reduce((sum, mm) => sum + mm, 0) / runs;
    const spread = Math.hypot(noiseMm, one.slip ? 6 : 0, stepMm / Math.sqrt(12));
    row(
      "drawReadings",
      "moments of what is drawn",
      "five standard errors of a mean of 20,000, and rounding",
    ).absolute(mean, 431.7 + one.bias, (5 * spread) / Math.sqrt(runs) + slack);
  });

  test("a class's readings drawn again: the mean of n has σ/√n", () => {
    // 430, 440, 430, 440: σ = 5 with N below the line, so 5/√9 for nine.
    const runs = 20_000;
    const [one, nine] = resampleAveraging({
      readingsMm: [430, 440, 430, 440],
      lengthMm: 430,
      counts: [1, 9],
      seed: 3,
      runs,
    });
    const bootstrap = row(
      "resampleAveraging",
      "bootstrap (Efron 1979): σ/√n",
      "five standard errors of drawing",
      BY_HAND,
    );
    bootstrap.absolute(one?.mean.biasMm, 5, 25 / Math.sqrt(runs));
    bootstrap.relative(one?.mean.sdMm, 5, 5 / Math.sqrt(2 * runs));
    bootstrap.relative(nine?.mean.sdMm, 5 / 3, 5 / Math.sqrt(2 * runs));
  });
});

describe("studies", () => {
  const readingsOf = (table: readonly (readonly number[])[]) =>
    table.flatMap((values, s) =>
      values.map((value, m) => ({ subject: `s${s}`, measurer: `m${m}`, repeat: 1, mm: millimetres(value) })),
    );

  test("readings written to half centimetres: χ² of last digits", () => {
    const { cm, counts, chiSquare, p, index } = measurement.digits;
    const text = cm.map((value, i) => `s${i},${value.toFixed(1)}`).join("\n");
    const [digits] = unwrap(safeDigitPreference(parseStudy(`subject,A1 (cm)\n${text}`))).all;
    const scipy = row("safeDigitPreference", "SciPy's chisquare; score of the WHO MONICA Project", TENS);
    scipy.same(digits?.counts, counts, 10);
    scipy.relative(digits?.chiSquare, chiSquare, 1e-13);
    scipy.relative(digits?.pValue, p, 1e-11);
    scipy.relative(digits?.index, index, 1e-13);
  });

  test("a drift over four repeats", () => {
    const { rows, slope, standardError, lower, upper, p, df } = measurement.trend;
    const text = rows.map((values, i) => `s${i},${values.join(",")}`).join("\n");
    const { all } = unwrap(safeRepeatTrend(parseStudy(`subject,A1 (mm),A2 (mm),A3 (mm),A4 (mm)\n${text}`)));
    const squares = row(
      "safeRepeatTrend",
      "least squares with a level for each subject (NumPy), t by SciPy",
      "NumPy's least squares of a design with levels loses some digits",
    );
    expect(all.degreesOfFreedom).toBe(df);
    squares.relative(all.slope.value, slope, 1e-10);
    squares.relative(all.standardErrorMm, standardError, 1e-10);
    squares.relative(all.slope.lower, lower, 1e-9);
    squares.relative(all.slope.upper, upper, 1e-9);
    squares.relative(all.pValue, p, 1e-9);
  });

  test("an outlying variance", () => {
    const { variances, index, statistic, critical, p } = measurement.cochran;
    const found = cochranTest(variances, 0.05);
    const scipy = row(
      "cochranTest",
      "Cochran's test for unequal degrees by SciPy's F",
      "SciPy's quantile of F",
    );
    scipy.same(found.index, index);
    scipy.relative(found.statistic, statistic, 1e-14);
    scipy.relative(found.critical, critical, 1e-12);
    scipy.relative(found.pValue, p, 1e-11);
  });

  test.each(measurement.mls)("an interval of a sum of mean squares at $confidence", (one) => {
    const ours = varianceInterval(one.parts, one.confidence);
    const scipy = row("varianceInterval", "Graybill & Wang 1980 by SciPy's chi-square", "SciPy's quantile");
    scipy.relative(ours.value, one.value, 1e-14);
    scipy.relative(ours.lower, one.lower, 1e-11);
    scipy.relative(ours.upper, one.upper, 1e-11);
  });

  test("Shrout & Fleiss (1979), Table 2, as a study of lengths", () => {
    const study = createStudy({
      readings: readingsOf(shroutFleiss.table.map((values) => values.map((v) => 100 + v))),
    });
    const { icc } = unwrap(safeStudyIcc(study));
    for (const form of ["1,1", "2,1", "3,1", "1,k", "2,k", "3,k"] as const) {
      const [over, under] = shroutFleiss.exact.icc[form];
      row(
        "safeStudyIcc",
        "Shrout & Fleiss 1979, Table 2",
        "a hundred millimetres on top cost two digits",
        "recomputed with exact fractions",
      ).relative(icc[form].value, over / under, 1e-13);
    }
  });

  test("Bland & Altman (1986) as a study of two measurers", () => {
    const table = pefr.wright.map(([wright], i) => [wright, pefr.mini[i]?.[0] ?? 0]);
    const study = createStudy({ readings: readingsOf(table) });
    const { limits } = unwrap(
      safeMeasurerAgreement(study, { first: "m0", second: "m1", method: "approximate-1986", multiplier: 2 }),
    );
    const agreement = row(
      "safeMeasurerAgreement",
      "Bland & Altman 1986, peak flow",
      TENS,
      "recomputed with mpmath 1.3",
    );
    agreement.relative(limits.bias.value, pefr.recomputed.bias, 1e-13);
    agreement.relative(limits.lowerLimit.value, pefr.recomputed.limits2[0], 1e-13);
    agreement.relative(limits.upperLimit.value, pefr.recomputed.limits2[1], 1e-13);
  });

  test("Bland & Altman (1986), the Wright meter twice: all of it in one report", () => {
    const rows = pefr.wright.map(([first, second], i) => `s${i},${first},${second}`).join("\n");
    const report = summariseStudy(parseStudy(`subject,A1 (mm),A2 (mm)\n${rows}`));
    const summary = row(
      "summariseStudy",
      "Bland & Altman 1986, peak flow",
      "1.96 stands there for the normal quantile",
      "recomputed with mpmath 1.3",
    );
    summary.relative(report.technicalError?.intra?.mm.value, pefr.recomputed.wright.withinSd, 1e-13);
    summary.relative(report.detectableChange.sameMeasurerMm, pefr.recomputed.wright.aboutZero196, 2e-5);
  });

  test("pairs of readings against the published limits of the Measurer's Handbook", () => {
    const limits = row(
      "safeCompareAllowance",
      "NATICK/TR-11/017 (2011), Appendix G",
      "whole millimetres",
      "printed (second-hand)",
    );
    // Stature 6, chest 14, buttock 12, biacromial 8, shoulder length 3, neck base 8 mm: App. G, pp. 225–227.
    const printed = {
      stature: 6,
      "chest-girth": 14,
      "hip-girth": 12,
      "shoulder-breadth": 8,
      "shoulder-length": 3,
      "neck-base-girth": 8,
    };
    expect(Object.fromEntries(observerAllowances.map(({ dimension, mm }) => [dimension, mm]))).toEqual(
      printed,
    );
    // 3 mm apart by the same; 9 and 6 mm by two: one of the two is beyond 6 mm.
    const study = parseStudy("subject,stature A1 (mm),stature A2 (mm),stature B1 (mm)\nmia,1702,1705,1711\n");
    const told = unwrap(safeCompareAllowance(study));
    limits.same(told.allowance.mm, printed.stature);
    limits.same(told.sameMeasurer, { pairs: 1, beyond: 0, largestMm: 3 }, 3);
    limits.same(told.twoMeasurers, { pairs: 2, beyond: 1, largestMm: 9 }, 3);
  });

  test("standard error of measurement: 30 mm, 0.96", () => {
    // 30 · √0.04 = 6
    row("standardErrorOfMeasurement", "SD √(1 − ICC) (Weir 2005)", "1 − 0.96 is rounded", BY_HAND).relative(
      standardErrorOfMeasurement(30, 0.96),
      6,
      1e-15,
    );
  });
});
