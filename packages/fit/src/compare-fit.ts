import type { FitPolicy } from "./policy.ts";

/** What two fits are compared by. */
export interface Comparable {
  readonly probability: number;
  readonly expectedMisfitMm: number;
}

/**
 * Negative where `a` fits better: the larger probability, then the smaller expected misfit. Probabilities
 * below the policy's `hopelessProbability` count as none at all, for between two sizes that both hardly
 * fit the nearer one is the better answer, and a wide size collects more of a far tail than a near one.
 */
export function compareFit(a: Comparable, b: Comparable, policy: FitPolicy): number {
  const standing = ({ probability }: Comparable) =>
    probability < policy.hopelessProbability ? 0 : steps(probability);
  return (
    standing(b) - standing(a) ||
    steps(a.expectedMisfitMm) - steps(b.expectedMisfitMm) ||
    steps(b.probability) - steps(a.probability)
  );
}

/** In billionths: two ways to the same figure, say from inches or from centimetres, must not rank differently. */
function steps(value: number): number {
  return Math.round(value * 1e9);
}
