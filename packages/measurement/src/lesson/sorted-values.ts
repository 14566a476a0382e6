/** Puts a value in its place among the first `count` values, which are sorted. */
export function insertSorted(sorted: Float64Array, count: number, value: number): void {
  let i = count;
  while (i > 0 && (sorted[i - 1] as number) > value) {
    sorted[i] = sorted[i - 1] as number;
    i -= 1;
  }
  sorted[i] = value;
}

/** The median of the first `count` values, which are sorted. */
export function middleOf(sorted: Float64Array, count: number): number {
  const half = count >> 1;
  const upper = sorted[half] as number;
  return count % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
}
