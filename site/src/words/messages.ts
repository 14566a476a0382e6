import type { charts, fit, measurement, tapewiseIssues, units } from "tapewise";

/** Codes of issues that can be seen on the working pages. */
type PersonCode = Extract<keyof typeof tapewiseIssues, `person-${string}`>;

/** Codes about readings of one person; those about studies of measurers belong to the page about hands. */
type ReadingCode = Extract<
  keyof typeof measurement.measurementIssues,
  `reading-${string}` | `readings-${string}` | "error-model-invalid" | "conditions-invalid"
>;

type ChoiceCode = Extract<keyof typeof fit.fitIssues, `chart-${string}` | `estimate-${string}` | "no-charts">;

export type MessageCode =
  | keyof typeof units.unitsIssues
  | ReadingCode
  | Extract<keyof typeof charts.chartsIssues, `chart-${string}`>
  | ChoiceCode
  | PersonCode;

/** Wording of an issue: what is wrong, and what would have been right. */
export interface Wording {
  readonly message: string;
  readonly expected: string;
}

/** The library's sentences in one language, by the code that stands for each. */
export interface Messages {
  readonly issues: Readonly<Record<MessageCode, Wording>>;
  readonly reasons: Readonly<Record<fit.ReasonCode, string>>;
  readonly nextSteps: Readonly<Record<fit.NextStepCode, string>>;
  readonly comparisons: Readonly<Record<fit.ComparisonCode, string>>;
  readonly dimensions: Readonly<Record<string, string>>;
  /** Words that come ready-made in facts. */
  readonly facts: Readonly<Record<string, string>>;
  /** Percentages that claim no certainty. */
  readonly lessThanOne: string;
  readonly moreThanNinetyNine: string;
  readonly lessThan: string;
  /** Surveyed people of one height. */
  readonly tall: string;
  readonly times: string;
  /** Lengths, with `{first}` and `{second}`. */
  readonly range: string;
  readonly upTo: string;
  readonly from: string;
  readonly and: string;
  readonly or: string;
}
