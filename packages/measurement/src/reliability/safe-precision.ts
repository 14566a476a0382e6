import {
  createIssue,
  failure,
  InvalidArgumentError,
  type Issue,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { requireShare } from "../require-number.ts";
import type { Study } from "../study/study.ts";
import { cellMeans, groupBy, type StudyCellMean } from "./cell-means.ts";
import { compensatedSum } from "./compensated-sum.ts";
import type { Precision, SubjectPrecision } from "./precision.ts";
import { screenPrecision } from "./screen-precision.ts";
import { temIssues } from "./tem-issues.ts";
import { varianceInterval } from "./variance-interval.ts";

/** Conventions. */
export interface PrecisionOptions {
  /** Probability of the interval; 0.95 where it is left out. */
  readonly confidence?: number;
  /** Limits are this times the standard deviation: 2.8 (ISO 5725-6:1994, 4.1.4) where it is left out. */
  readonly limitFactor?: number;
}

/**
 * Repeatability and reproducibility of a study after ISO 5725-2:1994, 7.4: subjects are the levels, measurers the
 * laboratories, and cells may be read unequally often or not at all. Per subject: sr² = Σ(n − 1)s²/Σ(n − 1), sd² = Σn(mean −
 * subject's mean)²/(p − 1), sL² = (sd² − sr²)/n̄ with n̄ = (Σn − Σn²/Σn)/(p − 1), 0 where that is negative, and
 * sR² = sr² + sL². The sums of all subjects, pooled in the same way, give the figures of the whole study: people
 * are many levels with few readings each, so that those of single subjects are rough.
 *
 * Screening is reported and nothing is left out. Cochran's test goes over all cells of the study, and again without the
 * one found; Grubbs' test over the measurers' means of each subject whom three or more have read. Both at 1 % (outlier)
 * and 5 % (straggler). Readings that are rounded coarsely agree to the mark in some cells and not in others, which
 * Cochran's test may take for a difference. Grubbs' test for two outlying means at once is not made: its critical values have no closed form.
 *
 * For the interval of sR see `total` of {@link safeTechnicalError}, the same figure in a complete study.
 *
 * Issue codes: `precision-unknown` (no value); `precision-variance-outlying`, `precision-mean-outlying` (warnings).
 *
 * @throws {@link InvalidArgumentError} when an option is out of range.
 *
 * @example
 * ```ts
 * import { parseStudy, safePrecision } from "@tapewise/measurement";
 * const study = parseStudy("subject,A1 (mm),A2 (mm),B1 (mm),B2 (mm)\nmia,430,434,440,436\nleo,480,480,482,486\n");
 * const outcome = safePrecision(study);
 * // Cells: s² = 8, 0, 8, 8, so sr² = 6; sd² = 36 and 16, so sL² = (26 − 6) / 2.
 * outcome.ok && outcome.value.repeatability.value === Math.sqrt(6); // => true
 * outcome.ok && outcome.value.reproducibilityMm; // => 4
 * outcome.ok && outcome.value.reproducibilityLimitMm.toFixed(1); // => "11.2"
 * ```
 */
export function safePrecision(study: Study, options: PrecisionOptions = {}): Outcome<Precision> {
  const { confidence = 0.95, limitFactor = 2.8 } = options;
  requireShare("confidence", confidence);
  if (!(limitFactor > 0 && limitFactor < 100)) {
    throw new InvalidArgumentError("limitFactor", limitFactor, "above 0 and below 100");
  }
  const cells = cellMeans(study);
  const levels = [...groupBy(cells, ({ subject }) => subject)].map(([subject, own]) => levelOf(subject, own));
  const within = compensatedSum(levels.map((level) => level.squaresWithin));
  const withinDf = levels.reduce((sum, level) => sum + level.withinDf, 0);
  const betweenDf = levels.reduce((sum, level) => sum + level.betweenDf, 0);
  if (withinDf === 0 || betweenDf === 0) {
    const needed =
      withinDf === 0 ? "no measurer read a subject twice" : "no subject was read by two measurers";
    const facts = { needed };
    return failure([createIssue(temIssues, "precision-unknown", { received: study.readings.length, facts })]);
  }
  const repeatability = varianceInterval(
    [{ weight: 1, meanSquare: within / withinDf, degreesOfFreedom: withinDf }],
    confidence,
  );
  const between = compensatedSum(levels.map((level) => level.squaresBetween));
  const scale = compensatedSum(levels.map((level) => level.scale));
  const betweenVariance = Math.max(0, (between - betweenDf * repeatability.value) / scale);
  const reproducibilityMm = Math.sqrt(repeatability.value + betweenVariance);
  const { variances, means } = screenPrecision(cells);
  const value: Precision = {
    confidence,
    repeatability: {
      value: Math.sqrt(repeatability.value),
      lower: Math.sqrt(repeatability.lower),
      upper: Math.sqrt(repeatability.upper),
    },
    betweenMm: Math.sqrt(betweenVariance),
    reproducibilityMm,
    repeatabilityLimitMm: limitFactor * Math.sqrt(repeatability.value),
    reproducibilityLimitMm: limitFactor * reproducibilityMm,
    limitFactor,
    perSubject: levels.map(subjectOf),
    variances,
    means,
  };
  const issues = [
    ...report("precision-variance-outlying", variances),
    ...report("precision-mean-outlying", means),
  ];
  return success(value, issues);
}

interface Level {
  readonly subject: string;
  readonly measurers: number;
  readonly readings: number;
  readonly meanMm: number;
  readonly squaresWithin: number;
  readonly withinDf: number;
  readonly squaresBetween: number;
  readonly betweenDf: number;
  /** (p − 1)·n̄ = Σn − Σn²/Σn. */
  readonly scale: number;
}

function levelOf(subject: string, cells: readonly StudyCellMean[]): Level {
  const readings = cells.reduce((sum, { count }) => sum + count, 0);
  const meanMm = compensatedSum(cells.map(({ count, meanMm: mean }) => count * mean)) / readings;
  return {
    subject,
    measurers: cells.length,
    readings,
    meanMm,
    squaresWithin: compensatedSum(cells.map(({ squares }) => squares)),
    withinDf: readings - cells.length,
    squaresBetween: compensatedSum(cells.map(({ count, meanMm: mean }) => count * (mean - meanMm) ** 2)),
    betweenDf: cells.length - 1,
    scale: readings - cells.reduce((sum, { count }) => sum + count ** 2, 0) / readings,
  };
}

function subjectOf(level: Level): SubjectPrecision {
  const { subject, measurers, readings, meanMm, withinDf, betweenDf } = level;
  const about = { subject, measurers, readings, meanMm };
  if (withinDf === 0) return about;
  const variance = level.squaresWithin / withinDf;
  const repeatabilityMm = Math.sqrt(variance);
  if (betweenDf === 0) return { ...about, repeatabilityMm };
  const between = Math.max(0, (level.squaresBetween - betweenDf * variance) / level.scale);
  const reproducibilityMm = Math.sqrt(variance + between);
  return { ...about, repeatabilityMm, betweenMm: Math.sqrt(between), reproducibilityMm };
}

function report(
  code: "precision-variance-outlying" | "precision-mean-outlying",
  findings: Precision["variances"],
): readonly Issue[] {
  return findings.map(({ subject, measurer, kind, test }) => {
    const facts = {
      subject,
      measurer,
      statistic: Math.round(test.statistic * 1000) / 1000,
      critical: Math.round(test.critical * 1000) / 1000,
      percent: kind === "outlier" ? 1 : 5,
    };
    return createIssue(temIssues, code, {
      path: [subject, measurer],
      received: facts.statistic,
      facts,
    });
  });
}
