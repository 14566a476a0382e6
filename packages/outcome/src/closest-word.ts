import { editDistance } from "./edit-distance.ts";

/** A longer text is no slip of the fingers. */
const LONGEST = 40;
/** More slips than this in one word are another word. */
const MOST_SLIPS = 3;

/**
 * The known word that a mistyped one most likely stands for, for a "did you mean": capitals, spaces,
 * hyphens and underscores make no difference, and at most two fifths of its letters, and three, may be wrong
 * (insert, drop, change, swap neighbours). The first of equally near ones; nothing if none is near.
 *
 * @example
 * ```ts
 * import { closestWord } from "@tapewise/outcome";
 * closestWord("statrue", ["stature", "readings"]); // => "stature"
 * closestWord("note", ["stature", "readings"]); // => undefined
 * ```
 */
export function closestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length > LONGEST) return undefined;
  const plainWord = plain(word);
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const steps = editDistance(plainWord, plain(candidate));
    if (steps <= mostSlips(candidate) && steps < least) {
      best = candidate;
      least = steps;
    }
  }
  return best;
}

/** Two fifths of the letters, at least one and at most three. */
function mostSlips(word: string): number {
  return Math.min(MOST_SLIPS, Math.max(1, Math.floor(word.length * 0.4)));
}

/** `measured_by`, `Measured By` and `measuredBy` are the same slip. */
function plain(word: string): string {
  return word.toLowerCase().replace(/[\s_-]/g, "");
}
