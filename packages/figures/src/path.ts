import { writeNumber } from "./element.ts";

/**
 * The data of a path of straight lines through points, for the attribute `d`; empty for no points.
 *
 * @example
 * ```ts
 * import { path } from "@tapewise/figures";
 * path([[0, 0], [10, 2.5]]); // => "M0 0L10 2.5"
 * ```
 */
export function path(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], k) => `${k === 0 ? "M" : "L"}${writeNumber(x)} ${writeNumber(y)}`).join("");
}
