import { closestWord } from "@tapewise/outcome";

/** The end of a message about an unknown word: the words that may be meant, if any are near. */
export function hintOf(suggestions: readonly string[]): string {
  return suggestions.length === 0 ? "" : `; did you mean ${suggestions.join(" or ")}?`;
}

/** {@link hintOf} the nearest of the known words. */
export function hintFor(word: string, known: readonly string[]): string {
  const nearest = closestWord(word, known);
  return hintOf(nearest === undefined ? [] : [nearest]);
}
