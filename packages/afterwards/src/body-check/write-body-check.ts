import type { BodyCheckStep } from "./body-check-state.ts";
import { fillBodyCheck, type WrittenStep } from "./fill-body-check.ts";
import { type BodyCheckTexts, bodyCheckTexts } from "./texts.ts";

/** How a step is written. */
export interface WriteBodyCheckOptions {
  readonly unit: "cm" | "in";
  /** A translation; English where it is left out. */
  readonly texts?: BodyCheckTexts;
}

/**
 * A step of the check in words: how to look and what can be answered, what to set, what to exchange. The facts go
 * into the texts of a language; lengths are in the reader's unit.
 *
 * @throws `InvalidArgumentError` for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { writeBodyCheck } from "@tapewise/afterwards";
 * writeBodyCheck({ kind: "adjust", adjustments: ["tighten-belt"] }, { unit: "cm" }).sentences;
 * // => ["Pull the hip belt tighter while the load rests on the hips, both sides alike."]
 * writeBodyCheck({ kind: "ask", item: "sternum-strap" }, { unit: "cm" }).choices.map(({ answer }) => answer);
 * // => ["Yes.", "It binds.", "I cannot tell."]
 * ```
 */
export function writeBodyCheck(step: BodyCheckStep, options: WriteBodyCheckOptions): WrittenStep {
  return fillBodyCheck(step, options.unit, options.texts ?? bodyCheckTexts);
}
