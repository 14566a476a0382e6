import type { SizeChart } from "@tapewise/charts";
import {
  type Comparison,
  compare,
  type FitPolicy,
  type Person,
  type RankedChart,
  type RecommendOptions,
} from "@tapewise/fit";
import { failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import type { PriorChoice } from "./choose-prior.ts";
import type { PersonLine } from "./person-line.ts";
import { safeReadPerson } from "./read-person.ts";
import { safeParsePerson } from "./safe-parse-person.ts";
import { sizesByStature } from "./sizes-by-stature.ts";

/** What one person is answered. */
export interface Answer {
  readonly line: PersonLine;
  readonly person: Person;
  /** The packs that could be judged, best first. */
  readonly packs: readonly RankedChart[];
  /** Everything about the readings and about charts that could not be judged. */
  readonly issues: readonly Issue[];
  readonly unit: "cm" | "in";
}

/** How a person is answered. */
export interface AnswerOptions {
  readonly prior?: PriorChoice | undefined;
  readonly policy?: FitPolicy | undefined;
  /** Unit of what is shown; that of the readings where it is left out. */
  readonly unit?: "cm" | "in" | undefined;
  /** What is believed of the person as seen from a chart that is uncertain in itself. */
  readonly asSeenFrom?: RecommendOptions["asSeenFrom"];
}

/**
 * Holds one person, as JSON describes them, against charts. What can be read is answered; whether an
 * answer with errors in it counts is for the caller to say.
 */
export function answerPerson(
  value: unknown,
  charts: readonly SizeChart[],
  options: AnswerOptions = {},
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
  const { policy, asSeenFrom } = options;
  const comparison =
    charts.length === 0
      ? success<Comparison>({ ranked: [] })
      : compare(read.value, charts, {
          unit,
          ...(policy === undefined ? {} : { policy }),
          ...(asSeenFrom === undefined ? {} : { asSeenFrom }),
        });
  return success({
    line: parsed.value,
    person: read.value,
    packs: comparison.ok ? comparison.value.ranked : [],
    issues: [...issues, ...aboutCharts(comparison)],
    unit,
  });
}

/** A chart that sizes by something that was not read is no fault of the person's, as long as another one answers. */
function aboutCharts({ ok, issues }: Outcome<Comparison>): readonly Issue[] {
  return issues.map((issue) =>
    issue.severity === "warning"
      ? issue
      : { ...issue, path: ["readings"], severity: ok ? "warning" : "error" },
  );
}

function unitOfReadings(person: Person): "cm" | "in" {
  const units = person.estimates.flatMap((estimate) => estimate.readings.map((reading) => reading.unit));
  return units.every((unit) => unit === "in" || unit === "ft") ? "in" : "cm";
}
