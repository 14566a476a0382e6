import { editDistance } from "@tapewise/outcome";
import { OTHER_UNIT_WORDS, UNIT_WORDS, UNREAD_LENGTH_WORDS } from "./data.ts";
import { type LengthUnit, lengthUnits } from "./length-unit.ts";
import type { Problem } from "./problem.ts";

/** The unit that a token of `tokenize` names, or nothing. */
export function findUnit(word: string): LengthUnit | undefined {
  return lengthUnits.find((unit) => UNIT_WORDS[unit].includes(word));
}

/** Whether a token may be meant as a unit: letters, a per cent or a degree sign. */
export function isWord(token: string): boolean {
  return /^[\p{L}%‰°]/u.test(token);
}

/** What is wrong with a word that stands where a unit should and names none of ours. */
export function unitProblem(word: string): Problem {
  const known = (words: readonly string[]): boolean =>
    words.includes(word) || words.includes(word.replace(/s$/, ""));
  const units = `${lengthUnits.slice(0, -1).join(", ")} or ${lengthUnits.at(-1)}`;
  for (const [kind, words] of Object.entries(OTHER_UNIT_WORDS)) {
    if (known(words)) return { code: "length-unit-wrong-kind", facts: { unit: word, kind, units } };
  }
  if (known(UNREAD_LENGTH_WORDS)) return { code: "length-unit-unread", facts: { unit: word, units } };
  return { code: "length-unit-unknown", facts: { unit: word, suggestion: nearestUnit(word) ?? units } };
}

/** The unit whose word is nearest: one slip away, or two in a longer word. */
export function nearestUnit(word: string): LengthUnit | undefined {
  let best: LengthUnit | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const unit of lengthUnits) {
    for (const known of UNIT_WORDS[unit]) {
      const most = word.length > 4 ? 2 : 1;
      if (Math.abs(known.length - word.length) > most) continue;
      const slips = editDistance(word, known);
      if (slips > most || slips >= word.length) continue;
      // Among words equally near, the one with the same first letter: it is seldom wrong.
      const cost = slips + (known[0] === word[0] ? 0 : 0.5);
      if (cost < least) {
        least = cost;
        best = unit;
      }
    }
  }
  return best;
}
