import { dimensionKind } from "@tapewise/landmarks";
import { failure, hasIssues, type Outcome, success, unwrap } from "@tapewise/outcome";
import { studentTQuantile, summarise } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { checkInput, requireReadings } from "./check-input.ts";
import { assumeConditions } from "./conditions.ts";
import { errorDefaults } from "./data.ts";
import { budgetFor } from "./error-budget.ts";
import type { Estimate } from "./estimate.ts";
import type { EstimateInput } from "./estimate-input.ts";
import { methodFromDefaults, methodFromStatement, repeatMm } from "./method-error.ts";
import { questionReadings } from "./question-readings.ts";
import { requireDefaults } from "./require-defaults.ts";
import { requireShare } from "./require-number.ts";

/**
 * Turns the readings of one dimension into an estimate: mean, combined standard uncertainty, effective
 * degrees of freedom and a coverage interval (GUM, JCGM 100:2008, clauses 4, 5 and G.4), with the error
 * budget line by line. All lengths are in mm.
 *
 * The outcome's issues hold questions about the readings (warnings); no reading is changed or left out.
 * Codes of failure: `readings-missing`, `error-model-invalid`, `conditions-invalid`. Codes of questions:
 * `reading-alone`, `reading-apart`, `reading-unit-suspect`, `reading-implausible`, `readings-mixed-units`,
 * `readings-scatter`, `readings-drift`, `readings-rounded`, `readings-too-alike`.
 *
 * @throws {@link InvalidArgumentError} for a coverage probability outside (0, 1), a reading that
 * `safeParseLength` could not have made, an unknown dimension, or a table of defaults with a figure that is
 * none or with no more than two degrees of freedom.
 *
 * @example
 * ```ts
 * import { parseLength } from "@tapewise/units";
 * import { safeEstimate } from "@tapewise/measurement";
 * const outcome = safeEstimate({
 *   dimension: "torso-length",
 *   readings: [parseLength("43 cm"), parseLength("44 cm"), parseLength("45 cm")],
 *   error: { biasMm: 6, repeatMm: 0, resolutionMm: 0 },
 * });
 * outcome.ok && [outcome.value.mm, outcome.value.uncertaintyMm]; // => [440, 6]
 * ```
 */
export function safeEstimate(input: EstimateInput): Outcome<Estimate> {
  const probability = input.coverageProbability ?? 0.95;
  requireShare("coverageProbability", probability);
  const defaults = input.defaults ?? errorDefaults;
  requireDefaults(defaults);
  requireReadings(input.readings);
  const path = input.path ?? [];
  const faults = checkInput(input, path);
  if (hasIssues(faults)) return failure(faults);

  const { dimension, readings, error } = input;
  const summary = summarise(readings.map((reading) => reading.mm));
  const sample = summary.sd === undefined ? {} : { sampleMm: summary.sd };
  const conditions = assumeConditions(input.conditions ?? {}, defaults.ruleLengthMm);
  const method =
    error === undefined
      ? methodFromDefaults(dimensionKind(dimension), summary.mean, conditions, defaults)
      : methodFromStatement(error);
  // Who follows our advice and finds the bones afresh, but does not say so, is not asked why readings scatter.
  const isUnsaid = error === undefined && conditions.assumed.includes("landmarks-found-afresh");
  const widest = isUnsaid
    ? methodFromDefaults(
        dimensionKind(dimension),
        summary.mean,
        { ...conditions, landmarksFoundAfresh: true },
        defaults,
      )
    : method;
  const questions = questionReadings({
    dimension,
    readings,
    path,
    repeatMm: repeatMm(method),
    mostRepeatMm: repeatMm(widest),
    ...(error === undefined ? {} : { statedStepMm: error.resolutionMm }),
  });
  const stepMm = error?.resolutionMm ?? questions.stepMm;
  const budget = budgetFor({ count: readings.length, stepMm, ...sample }, method);
  // The lower quantile, because a probability close to 1 keeps its digits there.
  const factor = Math.abs(studentTQuantile((1 - probability) / 2, budget.degreesOfFreedom));
  const halfWidth = factor * budget.uncertaintyMm;
  const estimate: Estimate = {
    dimension,
    mm: millimetres(summary.mean),
    uncertaintyMm: budget.uncertaintyMm,
    degreesOfFreedom: budget.degreesOfFreedom,
    coverage: {
      probability,
      factor,
      lowerMm: summary.mean - halfWidth,
      upperMm: summary.mean + halfWidth,
    },
    readings,
    spread: { ...sample, pooledMm: budget.pooledMm, degreesOfFreedom: budget.pooledDegreesOfFreedom },
    lastingMm: budget.lastingMm,
    perReadingMm: budget.perReadingMm,
    budget: budget.lines,
    conditions: error === undefined ? conditions : { ...conditions, assumed: [] },
  };
  return success(estimate, questions.issues);
}

/**
 * The value of {@link safeEstimate}, for data known to be good. Questions about the readings are not told.
 *
 * @throws `IssuesError` with the issues where no estimate can be made.
 * @throws {@link InvalidArgumentError} as {@link safeEstimate} does.
 *
 * @example
 * ```ts
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const estimate = parseEstimate({
 *   dimension: "hip-belt-girth",
 *   readings: [parseLength("91.2 cm"), parseLength("36 in")],
 *   error: { biasMm: 3, repeatMm: 0, resolutionMm: 0 },
 * });
 * [estimate.mm, estimate.uncertaintyMm]; // => [913.2, 3]
 * ```
 */
export function parseEstimate(input: EstimateInput): Estimate {
  return unwrap(safeEstimate(input));
}
