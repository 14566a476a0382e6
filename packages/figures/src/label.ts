import { type Attributes, element } from "./element.ts";
import { words } from "./words.ts";

/**
 * One line of text, in the colour of the words around the picture and 13 units high unless the attributes say otherwise.
 *
 * @example
 * ```ts
 * import { label } from "@tapewise/figures";
 * label(20, 28, "45 cm", { "text-anchor": "end" });
 * // => '<text x="20" y="28" fill="currentColor" font-size="13" text-anchor="end">45 cm</text>'
 * ```
 */
export function label(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return element("text", { x, y, fill: "currentColor", "font-size": 13, ...attributes }, words(text));
}
