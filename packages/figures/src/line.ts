import { type Attributes, element } from "./element.ts";

/**
 * A straight line in the colour of the words around the picture, unless the attributes say otherwise.
 *
 * @example
 * ```ts
 * import { line } from "@tapewise/figures";
 * line(0, 5, 10, 5); // => '<line x1="0" y1="5" x2="10" y2="5" stroke="currentColor"/>'
 * ```
 */
export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string {
  return element("line", { x1, y1, x2, y2, stroke: "currentColor", ...attributes });
}
