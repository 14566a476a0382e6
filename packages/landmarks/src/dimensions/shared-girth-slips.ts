import type { Slip } from "../dimension-entry.ts";

/** A slip whose size depends on the girth; each dimension adds its own. */
export type UnsizedSlip = Omit<Slip, "size">;

/** The tape runs lower on one side or at the back. */
export const tapeSlants: UnsizedSlip = {
  code: "tape-slants",
  what: "The tape ran lower at the back or on one side than in front.",
  shows:
    "Readings are a little long and scatter upwards: a slanting way round is never shorter than the level one where the body is a column.",
  detect: "Look from the side or in a mirror: the tape should make one level line all round.",
  mend: "Set the tape level at the back first, then close it in front, and read.",
};

/** The tape cuts into the flesh. */
export const tapeTooTight: UnsizedSlip = {
  code: "tape-too-tight",
  what: "The tape was pulled until it dented the skin.",
  shows: "Readings are short, and shorter each time as the soft tissue gives way.",
  detect: "Take the tape off: a red line means that it was too tight.",
  mend: "Let the tape touch all round without denting; one fingertip slips under it with ease.",
};

/** The tape sags. */
export const tapeTooLoose: UnsizedSlip = {
  code: "tape-too-loose",
  what: "The tape hung loose or sagged somewhere.",
  shows: "Readings are long and scatter.",
  detect: "Run a finger round behind the tape: it should meet the body everywhere.",
  mend: "Close the tape until it just touches all round, then read without pulling further.",
};

/** Clothes, pockets, belts. */
export const clothesUnderTape: UnsizedSlip = {
  code: "clothes-under-tape",
  what: "The tape went over thick clothes, a belt or full pockets.",
  shows: "Readings are long by about six times the thickness of what was underneath.",
  detect: "Look what lies under the tape, all the way round.",
  mend: "Empty the pockets and measure over bare skin or one thin layer; the layers worn on the trail are tried on with the pack.",
};

/** The belly is held in. */
export const bellyDrawnIn: UnsizedSlip = {
  code: "belly-drawn-in",
  what: "The belly was held in while the tape was read.",
  shows: "The reading is short; the tape feels tight a moment later.",
  detect: "Keep the tape closed for two ordinary breaths: if it tightens, the belly was held in.",
  mend: "Breathe out, let the belly be as it is, and read. The pack will be worn with the belly you have.",
};

/** The tape twisted behind the back. */
export const tapeTwisted: UnsizedSlip = {
  code: "tape-twisted",
  what: "The tape was twisted somewhere behind the back.",
  shows: "One reading stands out, longer than the others.",
  detect: "Run both hands along the tape from front to back.",
  mend: "Lay the tape flat and read again.",
};
