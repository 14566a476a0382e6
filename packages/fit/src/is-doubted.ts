import type { Issue } from "@tapewise/outcome";
import type { JudgedDimension } from "./judged-dimensions.ts";

/** Whether a doubt was raised about the estimate of any of these dimensions. */
export function isDoubted(judged: readonly JudgedDimension[], questions: readonly Issue[]): boolean {
  return judged.some(({ belief }) => questions.some(({ path }) => path.at(-1) === belief.dimension));
}
