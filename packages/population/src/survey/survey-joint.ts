import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import { populationIssues } from "../issues.ts";
import { type EmpiricalJoint, empiricalJoint } from "../joint/empirical-joint.ts";
import { factor } from "../joint/gaussian.ts";
import type { Variable } from "../joint/joint-model.ts";
import { type NormalJoint, normalJoint } from "../joint/normal-joint.ts";
import { placeOf, requireVariables } from "../joint/variable.ts";
import type { Survey } from "./survey.ts";

/**
 * The people of a survey who have a value of each wanted variable, as a joint model: every variable of the
 * survey where none are named.
 *
 * Issues: `survey-people-incomplete` says how many were left out; `survey-too-few-people` when nobody is left.
 *
 * @throws {@link InvalidArgumentError} when the survey does not have a wanted variable.
 *
 * @example
 * ```ts
 * import { readSurvey, safeSurveyPeople } from "@tapewise/population";
 * const survey = readSurvey("waist,hip\n82,98\n90,\n", {
 *   about: { label: "the crew", source: "measured at home", caveat: "two people" },
 *   dimensions: { "waist-girth": { column: "waist", unit: "cm" }, "hip-girth": { column: "hip", unit: "cm" } },
 * });
 * const outcome = safeSurveyPeople(survey);
 * outcome.ok && outcome.value.people; // => [[980, 820]]
 * outcome.issues[0]?.message; // => "1 of 2 people lack a value of hip-girth, waist-girth and were left out"
 * ```
 */
export function safeSurveyPeople(survey: Survey, wanted?: readonly Variable[]): Outcome<EmpiricalJoint> {
  const variables = wanted ?? survey.variables;
  requireVariables("wanted", variables);
  for (const variable of variables) placeOf(survey.variables, variable);
  const complete = survey.people.filter(({ values }) =>
    variables.every((variable) => values[variable] !== undefined),
  );
  const left = survey.people.length - complete.length;
  const facts = { count: left, people: survey.people.length, variables: variables.join(", ") };
  const issues: Issue[] =
    left === 0 ? [] : [createIssue(populationIssues, "survey-people-incomplete", { received: left, facts })];
  if (complete.length === 0) return failure([tooFew(0, 1), ...issues]);
  const people = complete.map(({ values }) => variables.map((variable) => values[variable] ?? 0));
  const weights = complete.map(({ weight }) => weight);
  return success(empiricalJoint({ about: survey.about, variables, people, weights }), issues);
}

/**
 * A joint normal model with the means and covariances of the people of a survey who have a value of each
 * wanted variable. Covariances are made free of bias by n / (n − 1), with Kish's effective n where people have
 * weights. At least two more people than variables are needed.
 *
 * Issues: those of {@link safeSurveyPeople}, and `survey-no-spread` when a variable is the same for all.
 *
 * @throws {@link InvalidArgumentError} when the survey does not have a wanted variable.
 *
 * @example
 * ```ts
 * import { readSurvey, safeSurveyNormal } from "@tapewise/population";
 * const survey = readSurvey("waist\n82\n90\n86\n", {
 *   about: { label: "the crew", source: "measured at home", caveat: "three people" },
 *   dimensions: { "waist-girth": { column: "waist", unit: "cm" } },
 * });
 * const outcome = safeSurveyNormal(survey);
 * outcome.ok && outcome.value.mean; // => [860]
 * outcome.ok && Math.round(outcome.value.covariance[0]?.[0] ?? 0); // => 1600
 * ```
 */
export function safeSurveyNormal(survey: Survey, wanted?: readonly Variable[]): Outcome<NormalJoint> {
  const outcome = safeSurveyPeople(survey, wanted);
  if (!outcome.ok) return outcome;
  const { value: people, issues } = outcome;
  const { about, variables, mean, effectivePeople } = people;
  const least = variables.length + 2;
  if (people.people.length < least) return failure([tooFew(people.people.length, least), ...issues]);
  const unbiased = effectivePeople / (effectivePeople - 1);
  const covariance = people.covariance.map((row) => row.map((value) => value * unbiased));
  const lower = factor(covariance);
  const flat = variables.find((_, i) => !((covariance[i]?.[i] ?? 0) > 0));
  if (lower === undefined || flat !== undefined) {
    const facts = { variable: flat ?? variables.join(", ") };
    return failure([
      createIssue(populationIssues, "survey-no-spread", { received: mean.length, facts }),
      ...issues,
    ]);
  }
  return success(normalJoint({ about, variables, mean, covariance }), issues);
}

function tooFew(people: number, least: number): Issue {
  return createIssue(populationIssues, "survey-too-few-people", {
    received: people,
    facts: { people, least },
  });
}
