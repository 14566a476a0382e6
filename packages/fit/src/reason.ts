import type { Facts } from "@tapewise/outcome";
import type { ReasonCode } from "./reasons.ts";

/** A reason before its sentence is written. */
export interface PlainReason<Code extends string = ReasonCode> {
  readonly code: Code;
  /** Lengths are in mm and their names end in `Mm`; probabilities run from 0 to 1 and end in `Probability`. */
  readonly facts: Facts;
}

/** Why a size was chosen, or what to do next: a stable code, the facts in it, and the sentence made of both. */
export interface Reason<Code extends string = string> extends PlainReason<Code> {
  readonly sentence: string;
}
