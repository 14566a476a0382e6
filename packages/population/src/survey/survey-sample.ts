import type { Variable } from "../joint/joint-model.ts";
import { placeOf } from "../joint/variable.ts";
import type { Survey } from "./survey.ts";

/** The values of one variable in a survey. */
export interface SurveySample {
  /** In mm, body mass in kg; people without a value are left out. */
  readonly values: readonly number[];
  /** A weight for each value; absent where the survey has no weights. */
  readonly weights?: readonly number[];
  /** The readings of each person, for {@link varianceComponents}. */
  readonly readings: readonly (readonly number[])[];
  /** How many people have no value. */
  readonly missing: number;
}

/**
 * One variable of a survey as a sample, ready for the functions that fit and summarise.
 *
 * @throws {@link InvalidArgumentError} when the survey does not have the variable.
 *
 * @example
 * ```ts
 * import { readSurvey, surveySample } from "@tapewise/population";
 * const survey = readSurvey("first,second\n82.5,83\n90,91\n", {
 *   about: { label: "the crew", source: "measured at home", caveat: "two people" },
 *   dimensions: {
 *     "waist-girth": [
 *       { column: "first", unit: "cm" },
 *       { column: "second", unit: "cm" },
 *     ],
 *   },
 * });
 * surveySample(survey, "waist-girth").values; // => [827.5, 905]
 * surveySample(survey, "waist-girth").readings; // => [[825, 830], [900, 910]]
 * ```
 */
export function surveySample(survey: Survey, variable: Variable): SurveySample {
  placeOf(survey.variables, variable);
  const people = survey.people.filter(({ values }) => values[variable] !== undefined);
  return {
    values: people.map(({ values }) => values[variable] ?? 0),
    ...(survey.weighted ? { weights: people.map(({ weight }) => weight) } : {}),
    readings: people.map(({ readings }) => readings[variable] ?? []),
    missing: survey.people.length - people.length,
  };
}
