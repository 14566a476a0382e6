import { InvalidArgumentError } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import type { SizeBounds } from "../planning/size-regions.ts";
import { requireCount, requireFinite } from "../require-number.ts";
import { type AveragingResult, averageRuns } from "./average-runs.ts";
import { type LessonError, requireLessonError } from "./lesson-error.ts";
import { drawSlip, readOnce, startSeries } from "./read-once.ts";

/** How often to draw and what to average. */
export interface AveragingOptions {
  /** How many readings to average, each a whole number from 1 to 1000; 1 to 10 where they are left out. */
  readonly counts?: readonly number[];
  /** How many series to draw, 2 to 1 000 000; 2000 where it is left out. */
  readonly runs?: number;
  /** Seed of the random numbers: any safe integer. */
  readonly seed: number;
  /** Sizes to pick from, in mm: the result then says how often the wrong one is picked. */
  readonly sizes?: readonly SizeBounds[];
}

/** Whom, with what error. */
export interface AveragingLesson extends AveragingOptions {
  /** The true length in mm. */
  readonly lengthMm: number;
  readonly error: LessonError;
}

const COUNTS: readonly number[] = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const RUNS = 2000;

/**
 * What the mean and the median of n readings are worth: many series are drawn, each by another measurer of the same
 * kind, and averaged over their first n readings. Bias and what lasts stay whatever n is; noise shrinks as 1/√n; a
 * slip drags the mean and hardly the median. A size is picked by the plain rule of `chanceOfRightSize`.
 *
 * The same seed gives the same figures in every run. A share p of N series is known to ±√(p (1 − p)/N).
 *
 * @throws {@link InvalidArgumentError} when a figure is not finite or out of range, there is no count, or a size is
 * none.
 *
 * @example
 * ```ts
 * import { simulateAveraging } from "@tapewise/measurement";
 * const [one, four] = simulateAveraging({
 *   lengthMm: 436, error: { biasMm: 3, lastingMm: 0, noiseMm: 8, stepMm: 0 }, counts: [1, 4], seed: 7,
 * });
 * [one?.mean.biasMm.toFixed(0), one?.mean.sdMm.toFixed(0)]; // => ["3", "8"]
 * [four?.mean.biasMm.toFixed(0), four?.mean.sdMm.toFixed(0)]; // => ["3", "4"]
 * ```
 */
export function simulateAveraging(lesson: AveragingLesson): readonly AveragingResult[] {
  const { lengthMm, error, sizes } = lesson;
  requireFinite("lengthMm", lengthMm);
  requireLessonError(error);
  const { counts, runs } = checkOptions(lesson);
  const random = createRandom(lesson.seed);
  const fill = (series: Float64Array): void => {
    const start = startSeries(lengthMm, error, random);
    for (let i = 0; i < series.length; i += 1) {
      series[i] = readOnce(start, drawSlip(error, random), error, random);
    }
  };
  return averageRuns(fill, counts, runs, lengthMm, sizes);
}

/** Options with nothing left out. */
export function checkOptions({ counts = COUNTS, runs = RUNS }: AveragingOptions): {
  readonly counts: readonly number[];
  readonly runs: number;
} {
  if (counts.length === 0) throw new InvalidArgumentError("counts", counts, "at least one count");
  counts.forEach((count, i) => {
    requireCount(`counts[${i}]`, count, 1, 1000);
  });
  if (new Set(counts).size !== counts.length) {
    throw new InvalidArgumentError("counts", counts.join(", "), "counts that differ");
  }
  requireCount("runs", runs, 2, 1_000_000);
  return { counts, runs };
}
