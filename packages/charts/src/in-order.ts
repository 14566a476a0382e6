import type { ChartDimension, SizeRange, SizeRanges } from "./size-chart.ts";

/** A size, or a hip belt, with its range of one dimension. */
export interface Ranged<Sized> {
  readonly size: Sized;
  readonly range: SizeRange;
}

/** What sizes and hip belts have in common. */
export interface AnySize {
  readonly name: string;
  readonly ranges: SizeRanges;
}

/**
 * The sizes that state a dimension, by where their ranges begin, then where they end, then by name.
 * The order in the chart plays no part.
 */
export function inOrder<Sized extends AnySize>(
  sizes: readonly Sized[],
  dimension: ChartDimension,
): readonly Ranged<Sized>[] {
  const ranged = sizes.flatMap((size) => {
    const range = size.ranges[dimension];
    return range === undefined ? [] : [{ size, range }];
  });
  return ranged.sort(
    (a, b) =>
      compare(a.range.interval.from, b.range.interval.from) ||
      compare(a.range.interval.to, b.range.interval.to) ||
      compare(a.size.name, b.size.name),
  );
}

/** Unlike a difference, this is defined for two equal infinities. */
function compare<T extends number | string>(a: T, b: T): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
