import type { Place } from "@tapewise/outcome";
import { chartIssue } from "./chart-issue.ts";
import type { Reading } from "./parts.ts";
import { hintFor } from "./suggest-word.ts";

/** One of a few words, in any capitals; nothing, and an issue, for any other. */
export function readWord<Word extends string>(
  text: string | undefined,
  known: readonly Word[],
  what: string,
  { path, issues }: Reading,
  place: Place | undefined,
): Word | undefined {
  if (text === undefined) return undefined;
  const lower = text.toLowerCase();
  const word = known.find((candidate) => candidate === lower);
  if (word === undefined) {
    const facts = { what, hint: hintFor(text, known), known: known.join(" or ") };
    issues.push(chartIssue("chart-word-unknown", { path, place, received: text, facts }));
  }
  return word;
}
