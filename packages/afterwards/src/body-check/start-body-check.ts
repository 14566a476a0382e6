import type { UncertainLength } from "@tapewise/fit";
import {
  createIssue,
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { afterwardsIssues } from "../issues.ts";
import type { BodyCheckSetup, BodyCheckState } from "./body-check-state.ts";
import { takeStep } from "./take-step.ts";

/**
 * Starts a look at a loaded pack on the body: what to look at first. {@link answerBodyCheck} takes the answers, one
 * by one, and gives the state that follows, until there is something to set, to exchange, or to show to a fitter, or
 * the pack sits right.
 *
 * Codes of failure: `check-size-unknown`, where the chart has no such size or belt.
 *
 * @throws {@link InvalidArgumentError} for a belief that is no length with a standard deviation, or a doubt below 0.
 *
 * @example
 * ```ts
 * import { answerBodyCheck, startBodyCheck } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const length = { meanMm: 430, sdMm: 8, degreesOfFreedom: Infinity };
 * const started = startBodyCheck({ chart, size: "M", length });
 * started.ok && started.value.step; // => { kind: "ask", item: "cautions" }
 * const hurt = started.ok ? answerBodyCheck(started.value, "cautions", "pain-or-numbness") : undefined;
 * hurt?.step; // => { kind: "see-fitter", reason: "pain-or-numbness" }
 * ```
 */
export function startBodyCheck(setup: BodyCheckSetup): Outcome<BodyCheckState> {
  requireLength("length", setup.length);
  if (setup.girth !== undefined) requireLength("girth", setup.girth);
  for (const [name, doubtMm] of Object.entries(setup.chartDoubtMm ?? {})) {
    if (!(Number.isFinite(doubtMm) && doubtMm >= 0)) {
      throw new InvalidArgumentError(`chartDoubtMm.${name}`, doubtMm, "a finite length, 0 or more");
    }
  }
  const { chart, size, belt } = setup;
  const faults = [
    ...unknownName("size", size, chart.sizes),
    ...(belt === undefined ? [] : unknownName("belt", belt, chart.belts)),
  ];
  return hasIssues(faults) ? failure(faults) : success(takeStep({ setup, look: 1, answers: [] }));
}

function unknownName(
  kind: string,
  name: string,
  known: readonly { readonly name: string }[],
): readonly Issue[] {
  if (known.some((one) => one.name === name)) return [];
  const facts = { kind, known: known.map((one) => one.name).join(", ") || "none" };
  return [createIssue(afterwardsIssues, "check-size-unknown", { path: [kind], received: name, facts })];
}

function requireLength(argument: string, { meanMm, sdMm }: UncertainLength): void {
  if (!Number.isFinite(meanMm))
    throw new InvalidArgumentError(`${argument}.meanMm`, meanMm, "a finite length");
  if (!(Number.isFinite(sdMm) && sdMm >= 0)) {
    throw new InvalidArgumentError(`${argument}.sdMm`, sdMm, "a finite length, 0 or more");
  }
}
