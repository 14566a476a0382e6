import type { Gaussian } from "./gaussian.ts";

/** Means and covariances of weighted people, divided by the sum of the weights; in two passes. */
export function weightedCovariance(
  people: readonly (readonly number[])[],
  weights: readonly number[],
): Gaussian {
  const size = people[0]?.length ?? 0;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const over = (f: (person: readonly number[]) => number): number =>
    people.reduce((sum, person, n) => sum + (weights[n] ?? 0) * f(person), 0) / total;
  const mean = Array.from({ length: size }, (_, i) => {
    const rough = over((person) => person[i] ?? 0);
    return rough + over((person) => (person[i] ?? 0) - rough);
  });
  const covariance = mean.map(() => new Array<number>(size).fill(0));
  const apart = new Float64Array(size);
  for (const [n, person] of people.entries()) {
    const share = (weights[n] ?? 0) / total;
    for (let i = 0; i < size; i += 1) apart[i] = (person[i] ?? 0) - (mean[i] ?? 0);
    for (let i = 0; i < size; i += 1) {
      const row = covariance[i] ?? [];
      for (let j = 0; j <= i; j += 1) row[j] = (row[j] ?? 0) + share * (apart[i] ?? 0) * (apart[j] ?? 0);
    }
  }
  for (const [i, row] of covariance.entries()) {
    for (let j = i + 1; j < size; j += 1) row[j] = covariance[j]?.[i] ?? 0;
  }
  return { mean, covariance };
}
