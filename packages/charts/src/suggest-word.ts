import { closestWord, didYouMean } from "@tapewise/outcome";

/** The end of a message about an unknown word: the nearest of the known words, if one is near. */
export function hintFor(word: string, known: readonly string[]): string {
  const nearest = closestWord(word, known);
  return didYouMean(nearest === undefined ? [] : [nearest]);
}
