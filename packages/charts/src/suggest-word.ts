import { distance } from "fastest-levenshtein";

/** The known word that was probably meant: at most two fifths of its letters away, and at most three; else none. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  const lower = word.toLowerCase();
  let nearest: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const furthest = Math.min(3, Math.round(candidate.length * 0.4));
    if (Math.abs(candidate.length - word.length) > furthest) continue;
    const away = distance(lower, candidate.toLowerCase());
    if (away < least && away <= furthest) {
      least = away;
      nearest = candidate;
    }
  }
  return nearest;
}

/** The end of a message about an unknown word: the words that may be meant, if any are near. */
export function hintOf(suggestions: readonly string[]): string {
  return suggestions.length === 0 ? "" : `; did you mean ${suggestions.join(" or ")}?`;
}

/** {@link hintOf} the nearest of the known words. */
export function hintFor(word: string, known: readonly string[]): string {
  const nearest = nearestWord(word, known);
  return hintOf(nearest === undefined ? [] : [nearest]);
}
