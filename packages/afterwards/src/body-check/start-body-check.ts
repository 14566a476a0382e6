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
 * @throws {@link InvalidArgumentError} for a belief that is no length with a standard deviation: a mean above 0 and up
 *   to 1 000 000 mm, a standard deviation from 0 to 1 000 000 mm, degrees of freedom above 1 or `Infinity`; or a doubt
 *   that is no such standard deviation. The bound of a kilometre only keeps the arithmetic finite: assumption.
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
  if (setup.length !== undefined) requireLength("length", setup.length);
  if (setup.girth !== undefined) requireLength("girth", setup.girth);
  for (const [name, doubtMm] of Object.entries(setup.chartDoubtMm ?? {})) {
    requireSpread(`chartDoubtMm.${name}`, doubtMm);
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

function requireLength(argument: string, { meanMm, sdMm, degreesOfFreedom }: UncertainLength): void {
  if (!(Number.isFinite(meanMm) && meanMm > 0 && meanMm <= MOST_MM)) {
    throw new InvalidArgumentError(`${argument}.meanMm`, meanMm, `a length above 0 and up to ${MOST_MM} mm`);
  }
  requireSpread(`${argument}.sdMm`, sdMm);
  if (!(degreesOfFreedom > 1)) {
    throw new InvalidArgumentError(`${argument}.degreesOfFreedom`, degreesOfFreedom, "above 1, or Infinity");
  }
}

function requireSpread(argument: string, sdMm: number): void {
  if (!(Number.isFinite(sdMm) && sdMm >= 0 && sdMm <= MOST_MM)) {
    throw new InvalidArgumentError(argument, sdMm, `a length from 0 to ${MOST_MM} mm`);
  }
}

/** Far beyond every body and pack: assumption. */
const MOST_MM = 1_000_000;
