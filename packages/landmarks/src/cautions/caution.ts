import type { DimensionId } from "../dimension-id.ts";
import type { LandmarkId } from "../landmark-id.ts";
import type { CautionCode } from "./caution-code.ts";

/** When a caution matters: while a point is felt for, while the reading is taken, or while the pack is carried. */
export type CautionMoment = "finding" | "reading" | "carrying";

/** A reason to be careful, with whom to ask. */
export interface Caution {
  readonly code: CautionCode;
  readonly name: string;
  readonly text: string;
  /** Who decides better than a number can. */
  readonly ask: string;
  readonly moments: readonly [CautionMoment, ...CautionMoment[]];
  readonly dimensions: readonly [DimensionId, ...DimensionId[]];
  /** The landmarks whose finding it touches. */
  readonly landmarks: readonly LandmarkId[];
}
