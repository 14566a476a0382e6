import type { ChoiceLine, ChoiceSummary } from "../../batch/choice-line.ts";
import { summariseChoice } from "../../batch/summarise-choice.ts";
import type { Answer } from "../../person/answer-person.ts";

/** One chart's answer with what only a single person is told. */
export interface DetailedChoice extends ChoiceSummary {
  readonly next: readonly { readonly code: string; readonly sentence: string }[];
}

/** An answer as `--json` prints it: a line of the batch contract, best pack first, with the next steps. */
export function detailedChoice(answer: Answer): ChoiceLine & { readonly choices: readonly DetailedChoice[] } {
  const ranked = answer.packs.map((pack) => pack.recommendation);
  const line = summariseChoice(answer.line.id ?? null, answer.person, ranked, answer.issues);
  const choices = line.choices.map((choice, index): DetailedChoice => {
    const next = ranked[index]?.next ?? [];
    return { ...choice, next: next.map(({ code, sentence }) => ({ code, sentence })) };
  });
  return { ...line, choices };
}
