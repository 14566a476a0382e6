import type { Interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { DimensionId } from "./dimension-id.ts";
import { limitsMm } from "./survey/limits-data.ts";

/** Whose limits: those of grown people, or those that also let children through. */
export type AgeGroup = "adult" | "child";

/**
 * Between which lengths, in millimetres, a reading of a dimension is plausible. A reading outside is a
 * reason to ask (a slip, a wrong unit, or an unusual body), never to refuse or to alter it.
 *
 * The smallest and the largest reading of the survey are widened by `wideningRules` and rounded
 * outwards to whole centimetres; `limitRules[dimension].basis` says on what they rest. For a child only
 * the lower limit falls, to 70 % of an adult's (assumption), since older children reach adult sizes.
 *
 * @throws {@link InvalidArgumentError} when the dimension or the age group is unknown.
 *
 * @example
 * ```ts
 * import { plausibleLimits } from "@tapewise/landmarks";
 * plausibleLimits("stature", "adult"); // => { from: 1260, to: 2200, fromClosed: true, toClosed: true }
 * plausibleLimits("stature", "child").from; // => 880
 * ```
 */
export function plausibleLimits(dimension: DimensionId, group: AgeGroup): Interval {
  if (!Object.hasOwn(limitsMm, dimension)) {
    throw new InvalidArgumentError("dimension", dimension, "one of the dimension ids");
  }
  if (group !== "adult" && group !== "child") {
    throw new InvalidArgumentError("group", group, '"adult" or "child"');
  }
  const [child, adult, to] = limitsMm[dimension];
  return { from: group === "adult" ? adult : child, to, fromClosed: true, toClosed: true };
}
