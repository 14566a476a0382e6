import type { CautionCode } from "@tapewise/landmarks";
import type { Side } from "../evidence/seen-outcome.ts";

/** What is looked at, in the order in which it is: each step rests on the ones before it. */
export const bodyCheckItemIds = [
  "cautions",
  "belt-position",
  "belt-closure",
  "back-panel",
  "shoulder-contact",
  "upper-straps",
  "strap-ends",
  "sternum-strap",
  "pressure-points",
] as const;

/** One of {@link bodyCheckItemIds}. */
export type BodyCheckItemId = (typeof bodyCheckItemIds)[number];

/** What can be set on the pack before it is exchanged. */
export const adjustmentCodes = [
  "lower-belt",
  "raise-belt",
  "tighten-belt",
  "loosen-shoulder-straps",
  "tighten-shoulder-straps",
  "loosen-upper-straps",
  "tighten-upper-straps",
  "harness-longer",
  "harness-shorter",
  "move-sternum-strap",
  "ease-pressure",
] as const;

/** One of {@link adjustmentCodes}. */
export type AdjustmentCode = (typeof adjustmentCodes)[number];

/** A part of the pack that a size or a belt decides. */
export type CheckedPart = "harness" | "belt";

/** One answer that an item allows. */
export interface BodyCheckAnswer {
  readonly id: string;
  /** What it says of the body against the range of the part: `below` where the part is too long or too large for it. */
  readonly says?: { readonly part: CheckedPart; readonly side: Side };
  /** What to set first; none where nothing can be set. */
  readonly adjust?: AdjustmentCode;
  /** Whether that has to be set before anything else can be judged. */
  readonly isFirst?: true;
  /** A reason to stop and to ask a professional, whatever the size. */
  readonly stop?: CautionCode;
}

/** One thing to look at. */
export interface BodyCheckItem {
  readonly id: BodyCheckItemId;
  /** Where its distances and angles come from. */
  readonly basis: "common practice, no source" | "caution";
  /** Figures in its texts: lengths in mm end in `Mm`, angles in `Degrees`. */
  readonly facts: Readonly<Record<string, number>>;
  /** How far the eye errs, as a standard deviation in mm of misfit; left out where nothing is told of a length. */
  readonly doubtMm?: number;
  readonly answers: readonly [BodyCheckAnswer, ...BodyCheckAnswer[]];
}
