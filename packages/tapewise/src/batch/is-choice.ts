import type { BatchLine, ChoiceLine } from "./choice-line.ts";

/**
 * Whether an answer is a choice, and not only issues.
 *
 * @example
 * ```ts
 * import { chooseLine, isChoice } from "tapewise/batch";
 * isChoice(chooseLine("{", [])); // => false
 * ```
 */
export function isChoice(answer: BatchLine): answer is ChoiceLine {
  return "choices" in answer;
}
