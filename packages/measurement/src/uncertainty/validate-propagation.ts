import { requireCount } from "../require-number.ts";
import { expandUncertainty } from "./expand-uncertainty.ts";
import { numericalTolerance } from "./numerical-tolerance.ts";
import type { Simulation } from "./propagate-distributions.ts";
import type { Propagation } from "./propagate-uncertainty.ts";

/** How far apart the two ways to an interval are. */
export interface Validation {
  /** |y − U − y_low|: how far apart the lower ends are. */
  readonly lowerDifference: number;
  readonly upperDifference: number;
  /** The numerical tolerance δ that both are held against. */
  readonly tolerance: number;
  /** Whether neither is above the tolerance: the law of propagation may then be used for the like. */
  readonly isValid: boolean;
  /** Whether the simulation is exact enough to say so: stable, and to a fifth of the tolerance (8.2). */
  readonly isConclusive: boolean;
}

/**
 * Holds the law of propagation against the propagation of distributions (JCGM 101:2008, clause 8): do the
 * ends of the coverage interval agree within half a unit of the last digit of u that means something? The
 * interval compared is the one with equal tails, at the probability of the simulation.
 *
 * @param digits - how many digits of the standard uncertainty mean something; the document takes 1 or 2
 * @throws {@link InvalidArgumentError} when the digits are no whole number from 1 to 9, or the propagated
 * uncertainty is 0.
 *
 * @example
 * ```ts
 * import { propagateDistributions, propagateUncertainty, validatePropagation } from "@tapewise/measurement";
 * const model = (values: ArrayLike<number>): number => Number(values[0]) ** 2;
 * const validation = validatePropagation(
 *   propagateUncertainty({ inputs: [{ name: "x", value: 0.01, uncertainty: 0.005 }], model }),
 *   propagateDistributions({
 *     inputs: [{ name: "x", distribution: { shape: "normal", mean: 0.01, sd: 0.005 } }], model, seed: 1,
 *   }),
 *   1,
 * );
 * validation.isValid; // => false
 * ```
 */
export function validatePropagation(
  propagation: Pick<Propagation, "value" | "uncertainty" | "degreesOfFreedom">,
  simulation: Simulation,
  digits: number,
): Validation {
  requireCount("digits", digits, 1, 9);
  const tolerance = numericalTolerance(propagation.uncertainty, digits);
  const { lower, upper } = expandUncertainty(propagation, simulation.probability);
  const lowerDifference = Math.abs(lower - simulation.symmetric.lower);
  const upperDifference = Math.abs(upper - simulation.symmetric.upper);
  return {
    lowerDifference,
    upperDifference,
    tolerance,
    isValid: lowerDifference <= tolerance && upperDifference <= tolerance,
    isConclusive: simulation.isStable && simulation.reachedTolerance <= tolerance / 5,
  };
}
