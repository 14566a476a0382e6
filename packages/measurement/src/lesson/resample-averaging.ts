import { InvalidArgumentError } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import { requireFinite } from "../require-number.ts";
import { type AveragingResult, averageRuns } from "./average-runs.ts";
import { type AveragingOptions, checkOptions } from "./simulate-averaging.ts";

/** A class's own readings of one person. */
export interface ClassLesson extends AveragingOptions {
  /** All readings, in mm: two or more. */
  readonly readingsMm: readonly number[];
  /** What they are held against, in mm: a careful reading by a teacher; the mean of all where it is left out. */
  readonly lengthMm?: number;
}

/**
 * What the mean and the median of n readings would be worth if they were drawn from those that a class has taken:
 * the bootstrap of B. Efron (1979), The Annals of Statistics 7, 1–26. Readings are drawn with replacement, so the
 * standard deviation for one reading is that of the class with its own number N below the line, √((N − 1)/N) of the
 * sample standard deviation. Without a length to hold them against the bias says nothing: it is then about 0.
 *
 * @throws {@link InvalidArgumentError} when there are fewer than two readings, a figure is not finite or out of
 * range, there is no count, or a size is none.
 *
 * @example
 * ```ts
 * import { resampleAveraging } from "@tapewise/measurement";
 * const [one, nine] = resampleAveraging({
 *   readingsMm: [430, 440, 430, 440], lengthMm: 430, counts: [1, 9], seed: 3,
 * });
 * [one?.mean.biasMm.toFixed(0), one?.mean.sdMm.toFixed(1), nine?.mean.sdMm.toFixed(1)]; // => ["5", "5.0", "1.7"]
 * ```
 */
export function resampleAveraging(lesson: ClassLesson): readonly AveragingResult[] {
  const { readingsMm, sizes } = lesson;
  if (readingsMm.length < 2) throw new InvalidArgumentError("readingsMm", readingsMm, "two readings or more");
  readingsMm.forEach((mm, i) => {
    requireFinite(`readingsMm[${i}]`, mm);
  });
  const lengthMm = lesson.lengthMm ?? readingsMm.reduce((sum, mm) => sum + mm, 0) / readingsMm.length;
  requireFinite("lengthMm", lengthMm);
  const { counts, runs } = checkOptions(lesson);
  const random = createRandom(lesson.seed);
  const last = readingsMm.length - 1;
  const fill = (series: Float64Array): void => {
    for (let i = 0; i < series.length; i += 1) series[i] = readingsMm[random.integer(0, last)] as number;
  };
  return averageRuns(fill, counts, runs, lengthMm, sizes);
}
