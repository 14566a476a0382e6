import type { BodyCheckItemId, CheckedPart } from "./body-check-item.ts";
import type { Contradiction, GivenAnswer } from "./body-check-state.ts";
import { meaningOf } from "./find-item.ts";

/** Two or more answers that cannot all be true. */
export interface Contradicted {
  readonly contradiction: Contradiction;
  readonly items: readonly BodyCheckItemId[];
}

const NAMES: Readonly<Record<CheckedPart, Contradiction>> = {
  harness: "harness-long-and-short",
  belt: "belt-large-and-small",
};

/** The first part that answers call both too long and too short, or too large and too small. */
export function findContradiction(answers: readonly GivenAnswer[]): Contradicted | undefined {
  const parts: readonly CheckedPart[] = ["harness", "belt"];
  for (const part of parts) {
    const of = (side: string) =>
      answers.filter((given) => {
        const { says } = meaningOf(given);
        return says?.part === part && says.side === side;
      });
    const [below, above] = [of("below"), of("above")];
    if (below.length > 0 && above.length > 0) {
      const items = answers.filter((given) => below.includes(given) || above.includes(given));
      return { contradiction: NAMES[part], items: items.map(({ item }) => item) };
    }
  }
  return undefined;
}
