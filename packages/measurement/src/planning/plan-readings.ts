import { readingsFor } from "../readings-for.ts";
import { requireCount, requirePositive, requireShare } from "../require-number.ts";
import { expandUncertainty } from "../uncertainty/expand-uncertainty.ts";
import { combineUncertainties } from "../welch-satterthwaite.ts";
import { type ReadingError, type ReadingErrorDegrees, requireReadingError } from "./reading-error.ts";

/** What is wanted of the mean: a standard uncertainty, or an expanded one at a probability, in mm. */
export type UncertaintyTarget =
  | { readonly standardMm: number }
  | { readonly expandedMm: number; readonly probability: number };

/** A number of readings that is enough. */
export interface ReachablePlan {
  readonly isReachable: true;
  /** The fewest readings that are enough, those already taken included. */
  readonly count: number;
  /** What they bring: standard uncertainty in mm. */
  readonly uncertaintyMm: number;
  /** The same for the figure that was asked for, standard or expanded. */
  readonly reachedMm: number;
}

/** No number of readings is enough. */
export interface UnreachablePlan {
  readonly isReachable: false;
  /** `lasting`: what averaging does not touch is already too large; `too-many`: nobody reads so often. */
  readonly reason: "lasting" | "too-many";
  /** What is left of the figure that was asked for when readings go on for ever, in mm. */
  readonly floorMm: number;
}

/** How many readings, or why none. */
export type ReadingPlan = ReachablePlan | UnreachablePlan;

/** More readings than anybody takes of one dimension. Assumption. */
const MOST_READINGS = 1000;

/**
 * How many readings of the same kind bring the uncertainty of their mean down to a target, or what stands
 * in the way: with a lasting part l no number brings the standard uncertainty below l, nor the expanded
 * one below k l. For a standard uncertainty this is {@link readingsFor}; for an expanded one the coverage
 * factor follows from Student's t at the effective degrees of freedom of each number (GUM G.4.1).
 *
 * With few degrees of freedom for the lasting part the coverage factor rises as its share does, so that the
 * expanded uncertainty can get worse again: the count is the first that is enough.
 *
 * @param mostReadings - where to stop; 1000 where it is left out
 * @throws {@link InvalidArgumentError} when a figure is not finite or out of range.
 *
 * @example
 * ```ts
 * import { planReadings } from "@tapewise/measurement";
 * planReadings({ perReadingMm: 8, lastingMm: 3 }, { standardMm: 5 });
 * // => { isReachable: true, count: 4, uncertaintyMm: 5, reachedMm: 5 }
 * planReadings({ perReadingMm: 8, lastingMm: 6 }, { standardMm: 5 });
 * // => { isReachable: false, reason: "lasting", floorMm: 6 }
 * ```
 */
export function planReadings(
  error: ReadingError & ReadingErrorDegrees,
  target: UncertaintyTarget,
  mostReadings: number = MOST_READINGS,
): ReadingPlan {
  requireReadingError(error);
  requireCount("mostReadings", mostReadings);
  const isStandard = "standardMm" in target;
  const wanted = isStandard ? target.standardMm : target.expandedMm;
  requirePositive(isStandard ? "target.standardMm" : "target.expandedMm", wanted);
  const reach = (uncertaintyMm: number, degreesOfFreedom: number): number =>
    isStandard
      ? uncertaintyMm
      : expandUncertainty({ value: 0, uncertainty: uncertaintyMm, degreesOfFreedom }, target.probability)
          .expanded;
  if (!isStandard) requireShare("target.probability", target.probability);
  const floorMm = reach(error.lastingMm, error.lastingDegreesOfFreedom ?? Number.POSITIVE_INFINITY);
  const areKnown = [error.perReadingDegreesOfFreedom, error.lastingDegreesOfFreedom].every(
    (degrees = Number.POSITIVE_INFINITY) => degrees === Number.POSITIVE_INFINITY,
  );
  // No coverage factor is below that of the normal distribution, so nothing smaller can be enough.
  const leastFactor = reach(1, Number.POSITIVE_INFINITY);
  const first = readingsFor(error, wanted / leastFactor);
  const at = (count: number): ReachablePlan => {
    const { uncertainty, degreesOfFreedom } = combined(error, count);
    return {
      isReachable: true,
      count,
      uncertaintyMm: uncertainty,
      reachedMm: reach(uncertainty, degreesOfFreedom),
    };
  };
  if (first === undefined) return { isReachable: false, reason: "lasting", floorMm };
  if (isStandard || areKnown) {
    return first <= mostReadings ? at(first) : { isReachable: false, reason: "too-many", floorMm };
  }
  for (let count = first; count <= mostReadings; count += 1) {
    const plan = at(count);
    if (plan.reachedMm <= wanted) return plan;
  }
  return { isReachable: false, reason: floorMm >= wanted ? "lasting" : "too-many", floorMm };
}

function combined(
  error: ReadingError & ReadingErrorDegrees,
  count: number,
): { readonly uncertainty: number; readonly degreesOfFreedom: number } {
  const { perReadingMm, lastingMm } = error;
  return combineUncertainties([
    {
      uncertainty: perReadingMm / Math.sqrt(count),
      degreesOfFreedom: error.perReadingDegreesOfFreedom ?? Number.POSITIVE_INFINITY,
    },
    { uncertainty: lastingMm, degreesOfFreedom: error.lastingDegreesOfFreedom ?? Number.POSITIVE_INFINITY },
  ]);
}
