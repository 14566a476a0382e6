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
 * The plain rule of a shop: take the size in which the measured length has most room to its nearer end. Where
 * two sizes overlap, or leave a gap, the middle of it parts them; a size that lies within another never has more
 * room and is never picked, and of two that are the same the first is. Sizes in order, smallest first.
 */
export function sizeRegions(sizes: readonly SizeBounds[]): readonly SizeRegion[] {
  if (sizes.length === 0) throw new InvalidArgumentError("sizes", sizes, "at least one size");
  sizes.forEach(({ from, to }, i) => {
    const isInterval = from < to && from < Number.POSITIVE_INFINITY && to > Number.NEGATIVE_INFINITY;
    if (!isInterval) {
      throw new InvalidArgumentError(`sizes[${i}]`, `${from} to ${to}`, "bounds in mm, the lower one first");
    }
  });
  // By lower ends, the widest first: one that ends no further than an earlier one lies within it.
  const sorted = sizes
    .map(({ from, to }, index) => ({ from, to, index }))
    .sort((a, b) => (a.from === b.from ? compare(b.to, a.to) : compare(a.from, b.from)));
  const picked: typeof sorted = [];
  for (const size of sorted) {
    if (size.to > (picked.at(-1)?.to ?? Number.NEGATIVE_INFINITY)) picked.push(size);
  }
  return picked.map((size, i) => {
    const before = picked[i - 1];
    const after = picked[i + 1];
    return {
      ...size,
      pickedFrom: before === undefined ? Number.NEGATIVE_INFINITY : (before.to + size.from) / 2,
      pickedTo: after === undefined ? Number.POSITIVE_INFINITY : (size.to + after.from) / 2,
    };
  });
}

function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
