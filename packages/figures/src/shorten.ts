/**
 * Text that has room for so many characters: what is longer loses its end for an ellipsis.
 *
 * @example
 * ```ts
 * import { shorten } from "@tapewise/figures";
 * shorten("Thimblewick Doily", 9); // => "Thimblew…"
 * ```
 */
export function shorten(text: string, characters: number): string {
  const all = [...text];
  return all.length <= characters ? text : `${all.slice(0, characters - 1).join("")}…`;
}
