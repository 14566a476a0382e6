import { InvalidArgumentError } from "@tapewise/outcome";
import { requireFinite, requirePositive } from "../require-number.ts";

/** One bar of a histogram. */
export interface HistogramBar {
  /** The bar holds values from here… */
  readonly fromMm: number;
  /** …up to here, this end left out. */
  readonly toMm: number;
  readonly count: number;
  /** Part of all values, 0 to 1. */
  readonly share: number;
}

/** More bars than anybody can tell apart. */
const MOST_BARS = 10_000;

/**
 * Values counted in bars of one width, to plot: bars begin at multiples of the width, and empty ones between the
 * first and the last are listed too.
 *
 * @param widthMm - above 0, and not so small that there would be more than 10 000 bars
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, or the width is out of range.
 *
 * @example
 * ```ts
 * import { histogramOf } from "@tapewise/measurement";
 * histogramOf([431, 434, 442], 5).map(({ fromMm, count }) => [fromMm, count]); // => [[430, 2], [435, 0], [440, 1]]
 * ```
 */
export function histogramOf(valuesMm: ArrayLike<number>, widthMm: number): readonly HistogramBar[] {
  requirePositive("widthMm", widthMm);
  if (valuesMm.length === 0) throw new InvalidArgumentError("valuesMm", [], "at least one value");
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < valuesMm.length; i += 1) {
    const value = valuesMm[i] as number;
    if (!Number.isFinite(value)) requireFinite(`valuesMm[${i}]`, value);
    const bar = Math.floor(value / widthMm);
    first = Math.min(first, bar);
    last = Math.max(last, bar);
  }
  if (!(last - first < MOST_BARS)) {
    throw new InvalidArgumentError("widthMm", widthMm, `a width that makes no more than ${MOST_BARS} bars`);
  }
  const counts = new Float64Array(last - first + 1);
  for (let i = 0; i < valuesMm.length; i += 1) {
    const bar = Math.floor((valuesMm[i] as number) / widthMm) - first;
    counts[bar] = (counts[bar] as number) + 1;
  }
  return Array.from(counts, (count, i) => ({
    fromMm: (first + i) * widthMm,
    toMm: (first + i + 1) * widthMm,
    count,
    share: count / valuesMm.length,
  }));
}
