import { type DimensionId, dimensionKind, dimensionName } from "@tapewise/landmarks";
import {
  createIssue,
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type IssuePath,
  type Outcome,
  success,
  unwrap,
} from "@tapewise/outcome";
import { studentTQuantile, summarise } from "@tapewise/statistics";
import { type LengthReading, millimetres } from "@tapewise/units";
import { assumeConditions, type Conditions, measurers, tools } from "./conditions.ts";
import { errorDefaults } from "./data.ts";
import { budgetFor, methodFromDefaults, methodFromStatement } from "./error-budget.ts";
import type { ErrorDefaults } from "./error-defaults.ts";
import type { Estimate } from "./estimate.ts";
import { measurementIssues } from "./issues.ts";
import { questionReadings } from "./question-readings.ts";
import type { StatedError } from "./stated-error.ts";

/** Readings of one dimension and what is known of how they were taken. */
export interface EstimateInput {
  readonly dimension: DimensionId;
  readonly readings: readonly LengthReading[];
  readonly conditions?: Conditions;
  /** The error of the readings where it is known; replaces the table of defaults. */
  readonly error?: StatedError;
  /** Another table of defaults. */
  readonly defaults?: ErrorDefaults;
  /** Probability of the coverage interval; 0.95 where it is left out. */
  readonly coverageProbability?: number;
  /** Where the readings sit in the caller's data. */
  readonly path?: IssuePath;
}

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
 * @throws {@link InvalidArgumentError} for a coverage probability outside (0, 1).
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
  if (!(probability > 0 && probability < 1)) {
    throw new InvalidArgumentError("coverageProbability", probability, "above 0 and below 1");
  }
  const path = input.path ?? [];
  const faults = checkInput(input, path);
  if (hasIssues(faults)) return failure(faults);

  const { dimension, readings, error } = input;
  const defaults = input.defaults ?? errorDefaults;
  const summary = summarise(readings.map((reading) => reading.mm));
  const conditions = assumeConditions(input.conditions ?? {}, defaults.ruleLengthMm);
  const method =
    error === undefined
      ? methodFromDefaults(dimensionKind(dimension), summary.mean, conditions, defaults)
      : methodFromStatement(error);
  const usualMm = Math.sqrt(method.repeat.reduce((sum, part) => sum + part.variance, 0));
  const writtenMm = Math.min(...finestSteps(readings));
  const questions = questionReadings({ dimension, readings, path, usualMm, stepMm: writtenMm });
  const budget = budgetFor(
    {
      count: readings.length,
      meanMm: summary.mean,
      stepMm: error?.resolutionMm ?? questions.stepMm,
      ...(summary.sd === undefined ? {} : { sampleMm: summary.sd }),
    },
    method,
  );
  const factor = studentTQuantile((1 + probability) / 2, budget.degreesOfFreedom);
  const estimate: Estimate = {
    dimension,
    mm: millimetres(summary.mean),
    uncertaintyMm: budget.uncertaintyMm,
    degreesOfFreedom: budget.degreesOfFreedom,
    coverage: {
      probability,
      factor,
      lowerMm: summary.mean - factor * budget.uncertaintyMm,
      upperMm: summary.mean + factor * budget.uncertaintyMm,
    },
    readings,
    spread: {
      ...(summary.sd === undefined ? {} : { sampleMm: summary.sd }),
      pooledMm: budget.pooledMm,
      degreesOfFreedom: budget.pooledDegreesOfFreedom,
    },
    lastingMm: budget.lastingMm,
    perReadingMm: budget.perReadingMm,
    budget: budget.lines,
    conditions,
  };
  return success(estimate, questions.issues);
}

/**
 * The value of {@link safeEstimate}, for data known to be good.
 *
 * @throws {@link IssuesError} with the issues where no estimate can be made.
 */
export function parseEstimate(input: EstimateInput): Estimate {
  return unwrap(safeEstimate(input));
}

function finestSteps(readings: readonly LengthReading[]): readonly number[] {
  // Spreading ten thousand readings into Math.min is safe; distinct steps are few in any case.
  return [...new Set(readings.map((reading) => reading.stepMm))];
}

function checkInput(input: EstimateInput, path: IssuePath): readonly Issue[] {
  const issues: Issue[] = [];
  if (input.readings.length === 0) {
    const facts = { dimension: dimensionName(input.dimension) };
    issues.push(
      createIssue(measurementIssues, "readings-missing", { path, received: input.readings, facts }),
    );
  }
  const { error, conditions } = input;
  for (const part of ["biasMm", "repeatMm", "resolutionMm"] as const) {
    const value = error?.[part];
    if (error !== undefined && !(Number.isFinite(value) && Number(value) >= 0)) {
      const facts = { part };
      issues.push(
        createIssue(measurementIssues, "error-model-invalid", {
          path: [...path, "error", part],
          received: value,
          facts,
        }),
      );
    }
  }
  const check = (part: string, value: unknown, isGood: boolean, choices: string) => {
    if (value !== undefined && !isGood) {
      const facts = { part, choices };
      issues.push(
        createIssue(measurementIssues, "conditions-invalid", {
          path: [...path, part],
          received: value,
          facts,
        }),
      );
    }
  };
  if (conditions !== undefined) {
    const { tool, measuredBy, ruleLengthMm } = conditions;
    check(
      "tool",
      tool,
      tools.some((known) => known === tool),
      tools.join(", "),
    );
    check(
      "measuredBy",
      measuredBy,
      measurers.some((known) => known === measuredBy),
      measurers.join(", "),
    );
    const isLength = Number.isFinite(ruleLengthMm) && Number(ruleLengthMm) > 0;
    check("ruleLengthMm", ruleLengthMm, isLength, "a number of millimetres above 0");
  }
  return issues;
}
