/** Mean and central moments of weighted values. */
export interface WeightedMoments {
  readonly total: number;
  readonly mean: number;
  /** Central moments, divided by the sum of the weights. */
  readonly variance: number;
  readonly third: number;
}

/** In two passes, so that a large common part of the values costs no digits. */
export function weightedMoments(values: readonly number[], weights: readonly number[]): WeightedMoments {
  let total = 0;
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) {
    const weight = weights[i] ?? 0;
    total += weight;
    sum += weight * (values[i] ?? 0);
  }
  const rough = sum / total;
  let first = 0;
  let second = 0;
  let third = 0;
  for (let i = 0; i < values.length; i += 1) {
    const share = (weights[i] ?? 0) / total;
    const deviation = (values[i] ?? 0) - rough;
    first += share * deviation;
    second += share * deviation * deviation;
    third += share * deviation ** 3;
  }
  const variance = Math.max(second - first * first, 0);
  return { total, mean: rough + first, variance, third: third - 3 * first * second + 2 * first ** 3 };
}
