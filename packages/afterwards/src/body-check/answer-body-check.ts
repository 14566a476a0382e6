import { InvalidArgumentError } from "@tapewise/outcome";
import type { BodyCheckItemId } from "./body-check-item.ts";
import type { BodyCheckState } from "./body-check-state.ts";
import { meaningOf } from "./find-item.ts";
import { takeStep } from "./take-step.ts";

/**
 * Takes the answer to what the state asks and gives the state that follows; the one given stays as it is.
 *
 * Answers that contradict each other (a harness too long and too short, a belt too large and too small) are taken back
 * and asked again, once; after that a fitter has to look. Pain, numbness, an injury, a pregnancy and a growing child
 * end the check at once, and are taken from every state, also where something else is asked or the check has ended.
 *
 * @throws {@link InvalidArgumentError} when the state does not ask this item and the answer is none that ends the check
 *   at once, or the item has no such answer.
 *
 * @example
 * ```ts
 * import { answerBodyCheck, startBodyCheck } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const length = { meanMm: 430, sdMm: 8, degreesOfFreedom: Infinity };
 * const started = startBodyCheck({ chart, size: "M", length });
 * const next = started.ok ? answerBodyCheck(started.value, "cautions", "none") : undefined;
 * next?.step; // => { kind: "ask", item: "belt-position" }
 * const high = next === undefined ? undefined : answerBodyCheck(next, "belt-position", "too-high");
 * high?.step; // => { kind: "adjust", adjustments: ["lower-belt"] }
 * const hurt = high === undefined ? undefined : answerBodyCheck(high, "pressure-points", "hurts-or-numb");
 * hurt?.step; // => { kind: "see-fitter", reason: "pain-or-numbness" }
 * ```
 */
export function answerBodyCheck(
  state: BodyCheckState,
  item: BodyCheckItemId,
  answer: string,
): BodyCheckState {
  const { step, ...seen } = state;
  const given = { item, answer };
  if (meaningOf(given).stop !== undefined) {
    // A calmer answer to the same question no longer holds; another reason to stop does.
    const kept = seen.answers.filter(
      (one) => one.item !== item || (one.answer !== answer && meaningOf(one).stop !== undefined),
    );
    return takeStep({ ...seen, answers: [...kept, given] });
  }
  if (step.kind !== "ask" || step.item !== item) {
    throw new InvalidArgumentError(
      "item",
      item,
      step.kind === "ask" ? step.item : "asked by the state, which has ended",
    );
  }
  return takeStep({ ...seen, answers: [...seen.answers, given] });
}
