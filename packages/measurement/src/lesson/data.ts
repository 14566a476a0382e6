// Slips to a wrong landmark, for the lesson. Basis of every figure: assumption. A vertebra at the root of the
// neck and the next one lie a few centimetres apart; how often it is mistaken for C7 is not known to us.
import type { LandmarkSlip } from "./lesson-error.ts";

/** A slip for the lesson, made up to show what one does: one reading in ten, two centimetres, either way. Assumption. */
export const lessonSlip: LandmarkSlip & { readonly basis: "assumption" } = {
  chance: 0.1,
  sizeMm: 20,
  direction: "either",
  basis: "assumption",
};
