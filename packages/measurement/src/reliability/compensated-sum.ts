/** A sum that carries the rounding of each step along (A. Neumaier, 1974, ZAMM 54, 39–51). */
export function compensatedSum(values: Iterable<number>): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}

/** The mean to the last digit or the one before, however large the part that all values share. */
export function compensatedMean(values: readonly number[]): number {
  return compensatedSum(values) / values.length;
}
