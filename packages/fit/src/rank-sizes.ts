import type { FitPolicy } from "./policy.ts";
import type { SizeFit } from "./recommendation.ts";

/**
 * Sizes from the best to the worst: by probability, equal ones by expected misfit, then by name, so
 * that the chart's order does not matter. Where no size is likely at all, misfit goes first, because
 * the nearest size is then the better answer.
 */
export function rankSizes(fits: readonly SizeFit[], policy: FitPolicy): readonly SizeFit[] {
  const best = fits.reduce((most, fit) => Math.max(most, fit.probability), 0);
  const byProbability = (a: SizeFit, b: SizeFit) => b.probability - a.probability;
  const byMisfit = (a: SizeFit, b: SizeFit) => compareNumbers(a.expectedMisfitMm, b.expectedMisfitMm);
  const [first, second] =
    best < policy.hopelessProbability ? [byMisfit, byProbability] : [byProbability, byMisfit];
  return fits.toSorted((a, b) => first(a, b) || second(a, b) || (a.size < b.size ? -1 : 1));
}

/** Order of two numbers that may both be infinite. */
function compareNumbers(a: number, b: number): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
