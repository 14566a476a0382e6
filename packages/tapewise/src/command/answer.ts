import type { SizeChart } from "@tapewise/charts";
import { type Comparison, compare, type Person } from "@tapewise/fit";
import { failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { sizesByStature } from "../batch/sizes-by-stature.ts";
import type { PersonLine } from "../person/person-line.ts";
import { type PriorChoice, safeReadPerson } from "../person/read-person.ts";
import { safeParsePerson } from "../person/safe-parse-person.ts";

/** What one person gets to see. */
export interface Answer {
  readonly line: PersonLine;
  readonly person: Person;
  /** Packs, best first; absent when no chart could be judged. */
  readonly comparison?: Comparison;
  /** Everything about the readings and about charts that could not be judged. */
  readonly issues: readonly Issue[];
  readonly unit: "cm" | "in";
}

export interface AnswerOptions {
  readonly prior?: PriorChoice | undefined;
  /** Unit of what is shown; that of the readings where it is left out. */
  readonly unit?: "cm" | "in" | undefined;
}

/** Holds one person, as JSON describes them, against charts. What can be read is answered. */
export function answerPerson(
  value: unknown,
  charts: readonly SizeChart[],
  options: AnswerOptions,
): Outcome<Answer> {
  const parsed = safeParsePerson(value);
  if (!parsed.ok) return parsed;
  const read = safeReadPerson(parsed.value, {
    prior: options.prior ?? "automatic",
    estimateStature: charts.some(sizesByStature),
  });
  const issues = [...parsed.issues, ...read.issues];
  if (!read.ok) return hasIssues(issues) ? failure(issues) : read;

  const unit = options.unit ?? unitOfReadings(read.value);
  const comparison = compare(read.value, charts, { unit });
  // Doubts that the prior raises stand with each recommendation, and once is enough.
  const unjudged = comparison.issues.filter((issue) => issue.severity === "error");
  const doubts = comparison.ok ? (comparison.value.ranked[0]?.recommendation.questions ?? []) : [];
  return success({
    line: parsed.value,
    person: read.value,
    ...(comparison.ok ? { comparison: comparison.value } : {}),
    issues: [...issues, ...doubts, ...unjudged.map((issue) => ({ ...issue, path: ["readings"] }))],
    unit,
  });
}

function unitOfReadings(person: Person): "cm" | "in" {
  const units = person.estimates.flatMap((estimate) => estimate.readings.map((reading) => reading.unit));
  return units.every((unit) => unit === "in" || unit === "ft") ? "in" : "cm";
}
