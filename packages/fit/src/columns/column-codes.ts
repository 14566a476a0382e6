import type { ReasonCode } from "../reasons.ts";
import type { Verdict } from "../recommendation.ts";

/** What the numbers in a column of verdicts mean. */
export const columnVerdicts: readonly Verdict[] = [
  "fits",
  "two-sizes-fit",
  "between-sizes",
  "outside-the-range",
  "measure-again",
];

export const FITS = 0;
export const TWO_SIZES = 1;
export const BETWEEN = 2;
export const OUTSIDE = 3;
export const AGAIN = 4;

/** What the bits in a column of reasons mean, from the lowest bit on: in the order in which `recommend` tells them. */
export const columnReasons: readonly ReasonCode[] = [
  "nearest-size",
  "equal-chance",
  "most-probable",
  "build-takes-longer",
  "harness-adjusts",
  "hip-belt-decides",
  "room-on-both-sides",
  "capacity-differs",
  "beyond-the-chart",
  "dimensions-disagree",
  "between-two-sizes",
  "no-size-likely",
  "nominal-length-inferred",
  "dimension-not-stated",
  "double-size",
  "girth-not-stated",
  "dimension-from-prior",
  "dimension-not-read",
  "dimension-not-charted",
  "cut-differs",
  "prior-used",
];
