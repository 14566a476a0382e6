import { createIssue, failure, type Outcome, success } from "@tapewise/outcome";
import { studentTQuantile, studentTUpperTail } from "@tapewise/statistics";
import { requireShare } from "../require-number.ts";
import type { Study, StudyReading } from "../study/study.ts";
import { groupBy } from "./cell-means.ts";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";
import type { IntervalEstimate } from "./interval-estimate.ts";
import { temIssues } from "./tem-issues.ts";

/** How readings change from one repeat to the next. */
export interface RepeatTrend {
  /** In mm for each repeat; below 0 where readings become shorter. */
  readonly slope: IntervalEstimate;
  readonly standardErrorMm: number;
  readonly degreesOfFreedom: number;
  /** The chance of a slope as far from 0 where there is no trend; absent where nothing scatters about the line. */
  readonly pValue?: number;
  /** Pairs of subject and measurer with readings of different repeats. */
  readonly cells: number;
  readonly readings: number;
}

/** The trend of a study, and that of each measurer who has enough readings. */
export interface StudyTrend {
  readonly confidence: number;
  readonly all: RepeatTrend;
  readonly perMeasurer: readonly { readonly measurer: string; readonly trend: RepeatTrend }[];
}

/**
 * Whether readings drift over the repeats, as with learning, fatigue, a tape that settles or a subject who tires: the
 * common slope on the number of the repeat within pairs of subject and measurer (analysis of covariance), with Student's t.
 * Repeats that are missing cost only what they would have told. A trend that differs from measurer to measurer shows in
 * `perMeasurer`; the interval of `all` takes it as common.
 *
 * The number of the repeat must be the order in time. The interval is exact for normal errors.
 *
 * Issue codes: `trend-unknown` (no value).
 *
 * @throws {@link InvalidArgumentError} when the confidence is not above 0 and below 1.
 *
 * @example
 * ```ts
 * import { parseStudy, safeRepeatTrend } from "@tapewise/measurement";
 * const study = parseStudy("subject,A1 (mm),A2 (mm),A3 (mm)\nmia,430,432,434\nleo,480,480,483\n");
 * const outcome = safeRepeatTrend(study);
 * // Σ(r − 2)(x − mean) = 4 + 3, Σ(r − 2)² = 2 + 2
 * outcome.ok && outcome.value.all.slope.value; // => 1.75
 * outcome.ok && outcome.value.all.degreesOfFreedom; // => 3
 * ```
 */
export function safeRepeatTrend(
  study: Study,
  options: { readonly confidence?: number } = {},
): Outcome<StudyTrend> {
  const confidence = options.confidence ?? 0.95;
  requireShare("confidence", confidence);
  const all = trendOf(study.readings, confidence);
  if (all === undefined) {
    return failure([createIssue(temIssues, "trend-unknown", { received: study.readings.length })]);
  }
  const perMeasurer = study.measurers.flatMap((measurer) => {
    const trend = trendOf(
      study.readings.filter((reading) => reading.measurer === measurer),
      confidence,
    );
    return trend === undefined ? [] : [{ measurer, trend }];
  });
  return success({ confidence, all, perMeasurer });
}

/** The common slope within cells; nothing where it, or the scatter about it, cannot be seen. */
function trendOf(readings: readonly StudyReading[], confidence: number): RepeatTrend | undefined {
  const groups = groupBy(readings, ({ subject, measurer }) => JSON.stringify([subject, measurer]));
  const cells = [...groups.values()].filter((own) => own.length >= 2);
  const points = cells.flatMap((own) => {
    const mean = compensatedMean(own.map(({ mm }) => mm));
    const middle = compensatedMean(own.map(({ repeat }) => repeat));
    return own.map(({ mm, repeat }) => ({ x: repeat - middle, y: mm - mean }));
  });
  const degreesOfFreedom = points.length - cells.length - 1;
  if (degreesOfFreedom < 1) return undefined;
  const spread = compensatedSum(points.map(({ x }) => x * x));
  const value = compensatedSum(points.map(({ x, y }) => x * y)) / spread;
  const left = compensatedSum(points.map(({ x, y }) => (y - value * x) ** 2));
  const standardErrorMm = Math.sqrt(left / degreesOfFreedom / spread);
  const reach = studentTQuantile((1 + confidence) / 2, degreesOfFreedom) * standardErrorMm;
  const t = Math.abs(value) / standardErrorMm;
  return {
    slope: { value, lower: value - reach, upper: value + reach },
    standardErrorMm,
    degreesOfFreedom,
    ...(standardErrorMm > 0 ? { pValue: 2 * studentTUpperTail(t, degreesOfFreedom) } : {}),
    cells: cells.length,
    readings: points.length,
  };
}
