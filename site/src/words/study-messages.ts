import type { measurement } from "tapewise";
import type { Messages, Wording } from "./messages.ts";

/** Codes that a reliability study can come with. */
export type StudyCode = Extract<
  keyof typeof measurement.measurementIssues,
  | `study-${string}`
  | `tem-${string}`
  | `precision-${string}`
  | `trend-${string}`
  | `digits-${string}`
  | `allowance-${string}`
  | `component${string}`
  | `agreement-${string}`
>;

/** The library's sentences about studies in one language, and the words that come ready-made in their facts. */
export interface StudyMessages {
  readonly issues: Readonly<Record<StudyCode, Wording>>;
  readonly facts: Readonly<Record<string, string>>;
}

/** All of the library's sentences that the page about hands can show. */
export function withStudies(messages: Messages, studies: StudyMessages): Messages {
  return {
    ...messages,
    issues: { ...messages.issues, ...studies.issues },
    facts: { ...messages.facts, ...studies.facts },
  };
}
