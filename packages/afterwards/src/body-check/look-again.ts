import { InvalidArgumentError } from "@tapewise/outcome";
import type { BodyCheckState } from "./body-check-state.ts";
import { takeStep } from "./take-step.ts";

/**
 * Starts the second look, after the pack was set as the first one said. What was seen before no longer counts, for
 * the pack sits differently now. A second look ends without another one.
 *
 * @throws {@link InvalidArgumentError} when the state has not ended in something to adjust.
 *
 * @example
 * ```ts
 * import { answerBodyCheck, lookAgain, startBodyCheck } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const length = { meanMm: 430, sdMm: 8, degreesOfFreedom: Infinity };
 * const started = startBodyCheck({ chart, size: "M", length });
 * const calm = started.ok ? answerBodyCheck(started.value, "cautions", "none") : undefined;
 * const high = calm === undefined ? undefined : answerBodyCheck(calm, "belt-position", "too-high");
 * const again = high === undefined ? undefined : lookAgain(high);
 * [again?.look, again?.answers, again?.step.kind]; // => [2, [], "ask"]
 * ```
 */
export function lookAgain({ setup, step }: BodyCheckState): BodyCheckState {
  if (step.kind !== "adjust") {
    throw new InvalidArgumentError("state", step.kind, "a state that ended in something to adjust");
  }
  return takeStep({ setup, look: 2, answers: [] });
}
