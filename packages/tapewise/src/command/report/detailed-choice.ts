import type { ChoiceLine, ChoiceSummary } from "../../batch/choice-line.ts";
import { summariseChoice } from "../../batch/summarise-choice.ts";
import type { Answer } from "../answer.ts";

/** One chart's answer with what only a single person is told. */
export interface DetailedChoice extends ChoiceSummary {
  readonly belt?: { readonly pick: string; readonly probability: number };
  readonly next: readonly { readonly code: string; readonly sentence: string }[];
}

/** An answer as `--json` prints it: a line of the batch contract, best pack first, with belt and next steps. */
export function detailedChoice(answer: Answer): ChoiceLine & { readonly choices: readonly DetailedChoice[] } {
  const ranked = answer.comparison?.ranked.map((one) => one.recommendation) ?? [];
  const line = summariseChoice(answer.line.id ?? null, answer.person, ranked, answer.issues);
  const choices = line.choices.map((choice, index): DetailedChoice => {
    const { belt, next = [] } = ranked[index] ?? {};
    return {
      ...choice,
      ...(belt === undefined ? {} : { belt: { pick: belt.pick, probability: belt.probability } }),
      next: next.map(({ code, sentence }) => ({ code, sentence })),
    };
  });
  return { ...line, choices };
}
