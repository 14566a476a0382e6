/**
 * The end of a message about an unknown word: the words that may be meant, or nothing where none is near.
 *
 * @example
 * ```ts
 * import { didYouMean } from "@tapewise/outcome";
 * didYouMean(["stature"]); // => "; did you mean “stature”?"
 * didYouMean([]); // => ""
 * ```
 */
export function didYouMean(suggestions: readonly string[]): string {
  return suggestions.length === 0
    ? ""
    : `; did you mean ${suggestions.map((word) => `“${word}”`).join(" or ")}?`;
}
