import type { Facts } from "@tapewise/outcome";

/**
 * Why a size was chosen, or what to do next: a stable code, the facts in it (lengths in mm, their
 * names end in `Mm`; probabilities from 0 to 1), and the sentence made of both.
 */
export interface Reason<Code extends string = string> {
  readonly code: Code;
  readonly facts: Facts;
  readonly sentence: string;
}
