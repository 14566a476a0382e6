import type { UnsizedSlip } from "./shared-girth-slips.ts";

/** Shoes were worn. */
export const shoesOn: UnsizedSlip = {
  code: "shoes-on",
  what: "Shoes or thick socks were worn.",
  shows: "Every height is long by the same amount; differences of two heights are not touched.",
  detect: "Look down.",
  mend: "Take them off and read again.",
};

/** The arm that carries the height over to the wall tilted. */
export const bookTilted: UnsizedSlip = {
  code: "book-tilted",
  what: "The book or ruler that carries the height over to the wall was not level.",
  shows: "Readings scatter, and the more the further the point is from the wall.",
  detect: "Press a second edge of the book flat against the wall: it tilts if there is a gap.",
  mend: "Keep one edge of the book flat on the wall, or put a spirit level on the ruler.",
};

/** The tape or rule leaned. */
export const tapeLeans: UnsizedSlip = {
  code: "tape-leans",
  what: "The tape or rule did not run straight up from the floor.",
  shows: "Readings are a little long and never short of the true height.",
  detect: "Hang a keyring on a thread beside the tape: both should run side by side.",
  mend: "Tape the rule to the wall, upright, zero on the floor.",
};

/** The back was rounded. */
export const slouched: UnsizedSlip = {
  code: "slouched",
  what: "The back was rounded or the knees were bent.",
  shows: "Readings are short and rise after a deep breath and a fresh stand.",
  detect: "Ask for a fresh stand and read again.",
  mend: "Stand upright but without stretching, and read.",
};

/** The body is shorter in the evening. */
export const timeOfDay: UnsizedSlip = {
  code: "time-of-day",
  what: "Morning and evening readings were mixed: the discs of the spine settle during the day.",
  shows: "Evening readings are shorter than morning ones.",
  detect: "Ask at what time each was taken.",
  mend: "Read at about the same time of day, best around midday.",
};
