import { distance } from "fastest-levenshtein";

/** The known word that was probably meant: at most a third of its letters away; else none. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  const lower = word.toLowerCase();
  let nearest: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) > candidate.length / 3) continue;
    const away = distance(lower, candidate.toLowerCase());
    if (away < least && away <= candidate.length / 3) {
      least = away;
      nearest = candidate;
    }
  }
  return nearest;
}

/** What an issue expects in place of an unknown word: the one that was probably meant, or all of them. */
export function suggestWord(word: string, known: readonly string[]): string {
  const nearest = nearestWord(word, known);
  return nearest === undefined ? `one of ${known.join(", ")}` : `did you mean ${nearest}?`;
}
