import { dimensionKind } from "@tapewise/landmarks";
import type { Anticipation } from "../anticipation.ts";
import { type ErrorSum, sumErrors } from "../error-sum.ts";
import { methodAhead } from "../method-ahead.ts";
import { type MethodError, methodFromDefaults, varianceOf } from "../method-error.ts";
import { readingsFor } from "../readings-for.ts";
import { requireCount } from "../require-number.ts";
import { shownVariance } from "../scatter-behind.ts";
import { type NextConditions, nextWays } from "./next-ways.ts";

/** What further readings of one kind would bring. All lengths in mm. */
export interface NextWayRow extends NextConditions {
  /** Standard uncertainty of all readings together, old and new. */
  readonly uncertaintyMm: number;
  /** By how much it is below what it is now, and that as a share of what it is now. */
  readonly gainMm: number;
  readonly gainShare: number;
  /** What is left when readings of this kind go on for ever, those so far included. */
  readonly floorMm: number;
  /** How many readings in all of the present kind would be as good; absent where no number would. */
  readonly sameAsReadings?: number;
}

/** The ways to measure on, the best first. */
export interface NextWayComparison {
  /** Standard uncertainty of the readings so far, in mm. */
  readonly nowMm: number;
  readonly further: number;
  readonly ways: readonly NextWayRow[];
}

/**
 * Whether to read again, to find the bones afresh, to fetch a helper or to take another tool: what the same
 * number of further readings would bring each way, by the table of defaults.
 *
 * New readings of another kind are a second result beside the first. The two share what lasts in both: the habit
 * of whoever measures when it is the same person, the scale when it is the same tool, the slip in finding the bones
 * when the same person takes another tool to the same marks. They are joined with the
 * weights that make the variance smallest, none below 0: for variances a and b with the covariance c that is
 * (ab − c²)/(a + b − 2c) (least squares of two correlated results, GUM 5.2.2).
 *
 * @param soFar - the readings taken so far: dimension, length, count, step and conditions
 * @param further - how many more
 * @throws {@link InvalidArgumentError} as `anticipateUncertainty` does, or when `further` is no whole number above 0.
 *
 * @example
 * ```ts
 * import { compareNextWays } from "@tapewise/measurement";
 * const { ways } = compareNextWays(
 *   { dimension: "torso-length", lengthMm: 430, count: 3, stepMm: 1, conditions: { tool: "tape", measuredBy: "self" } },
 *   3,
 * );
 * ways.map(({ way, tool }) => `${way}, ${tool}`);
 * // => ["helper, tape", "landmarks-afresh, tape", "other-tool, short-rule", "repeat, tape", "other-tool, cord-and-ruler"]
 * ways.map(({ gainShare }) => gainShare.toFixed(2)); // => ["0.47", "0.21", "0.05", "0.05", "0.04"]
 * ```
 */
export function compareNextWays(soFar: Anticipation, further: number): NextWayComparison {
  const { dimension, lengthMm, count, stepMm } = soFar;
  requireCount("count", count);
  requireCount("further", further);
  const { defaults, known, method: own } = methodAhead(soFar);
  const kind = dimensionKind(dimension);
  const sumOf = (method: MethodError, readings: number): ErrorSum => {
    const sampleMm = Math.sqrt(shownVariance(varianceOf(method.repeat), stepMm));
    return sumErrors({ count: readings, sampleMm, stepMm }, method);
  };
  const now = sumOf(own, count);
  const nowMm = now.uncertaintyMm;

  const rowOf = (conditions: NextConditions): NextWayRow => {
    const { way, tool, measuredBy, landmarksFoundAfresh } = conditions;
    const method = methodFromDefaults(
      kind,
      lengthMm,
      { ...known, tool, measuredBy, landmarksFoundAfresh },
      defaults,
    );
    const fresh = sumOf(method, further);
    const isSamePerson = measuredBy === known.measuredBy;
    const shared = varianceOf(
      own.lasting.filter(({ source }) => {
        if (source === "tool-scale") return tool === known.tool;
        // Only who takes another tool to the same marks finds no bone anew.
        return (
          isSamePerson && (source !== "landmark-finding" || (way === "other-tool" && !landmarksFoundAfresh))
        );
      }),
    );
    const isSame = way === "repeat";
    const uncertaintyMm = isSame
      ? sumOf(own, count + further).uncertaintyMm
      : joined(nowMm, fresh.uncertaintyMm, shared);
    const floorMm = isSame ? now.lastingMm : joined(nowMm, fresh.lastingMm, shared);
    const sameAsReadings = uncertaintyMm > 0 ? readingsFor(now, uncertaintyMm) : undefined;
    return {
      ...conditions,
      uncertaintyMm,
      gainMm: nowMm - uncertaintyMm,
      gainShare: nowMm === 0 ? 0 : 1 - uncertaintyMm / nowMm,
      floorMm,
      ...(sameAsReadings === undefined ? {} : { sameAsReadings }),
    };
  };
  const ways = nextWays(known)
    .map(rowOf)
    .toSorted((a, b) => a.uncertaintyMm - b.uncertaintyMm);
  return { nowMm, further, ways };
}

/** The standard uncertainty of the best mean of two results with a covariance. */
function joined(oneMm: number, otherMm: number, covariance: number): number {
  const one = oneMm ** 2;
  const other = otherMm ** 2;
  const shared = Math.min(covariance, one, other);
  const apart = one + other - 2 * shared;
  if (apart <= 0) return Math.min(oneMm, otherMm);
  return Math.sqrt(Math.max(0, (one * other - shared ** 2) / apart));
}
