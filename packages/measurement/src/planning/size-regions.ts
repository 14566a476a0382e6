import { InvalidArgumentError } from "@tapewise/outcome";

/** The bounds of one size, in mm: `-Infinity` and `Infinity` stand for open ends. An `Interval` is one too. */
export interface SizeBounds {
  readonly from: number;
  readonly to: number;
}

/** A size and where a measured length has to lie for it to be picked, both in mm. */
export interface SizeRegion extends SizeBounds {
  /** Position in the list that was given. */
  readonly index: number;
  readonly pickedFrom: number;
  readonly pickedTo: number;
}

/**
 * The plain rule that shops use: take the size that the measured length lies in; where two sizes overlap, or
 * leave a gap, the middle of it parts them. Sizes in order, smallest first. A size that lies within another
 * has no part of its own and is refused.
 */
export function sizeRegions(sizes: readonly SizeBounds[]): readonly SizeRegion[] {
  if (sizes.length === 0) throw new InvalidArgumentError("sizes", sizes, "at least one size");
  sizes.forEach(({ from, to }, i) => {
    const isInterval = from < to && from < Number.POSITIVE_INFINITY && to > Number.NEGATIVE_INFINITY;
    if (!isInterval) {
      throw new InvalidArgumentError(`sizes[${i}]`, `${from} to ${to}`, "bounds in mm, the lower one first");
    }
  });
  const sorted = sizes
    .map(({ from, to }, index) => ({ from, to, index }))
    .sort((a, b) => (a.from === b.from ? compare(a.to, b.to) : compare(a.from, b.from)));
  const cuts = sorted.slice(1).map((next, i) => {
    const { from, to, index } = sorted[i] as (typeof sorted)[number];
    if (next.to < to || (next.from === from && next.to === to) || cutless(next.from, to)) {
      const expected = "a size of which no other one is a part";
      throw new InvalidArgumentError(`sizes[${index}]`, `${from} to ${to}`, expected);
    }
    return (next.from + to) / 2;
  });
  return sorted.map((size, i) => ({
    ...size,
    pickedFrom: i === 0 ? Number.NEGATIVE_INFINITY : (cuts[i - 1] as number),
    pickedTo: i === cuts.length ? Number.POSITIVE_INFINITY : (cuts[i] as number),
  }));
}

/** Two sizes of which one is open where the other begins have no middle between them. */
function cutless(from: number, to: number): boolean {
  return !Number.isFinite(from) || !Number.isFinite(to);
}

function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
