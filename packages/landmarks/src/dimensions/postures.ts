/**
 * How to stand, in steps that several dimensions share. After the standing posture of ISO 7250-1 and
 * ISO 8559-1 (second-hand, Kouchi 2020), in our words; taking the shoes off and the light clothes are
 * common practice, no source.
 */
export const uprightPosture: readonly [string, ...string[]] = [
  "Stand upright but at ease on a hard, level floor, without shoes, heels together or nearly so, the weight on both feet.",
  "Let the shoulders drop and the arms hang.",
  "Look straight ahead: the head is level when the lower rim of the eye socket and the notch above the flap of the ear are equally high.",
  "Breathe quietly.",
];

/** How to stand for a girth: as {@link uprightPosture}, and with a relaxed belly. */
export const girthPosture: readonly [string, ...string[]] = [
  "Stand upright but at ease, heels together or nearly so, the weight on both feet.",
  "Let the arms hang; lift them only to let the tape pass, and lower them again before reading.",
  "Leave the belly loose: neither drawn in nor pushed out.",
  "Breathe quietly and read at the end of an ordinary breath out.",
];

/** How to sit for the breadths of the shoulders. */
export const shoulderPosture: readonly [string, ...string[]] = [
  "Sit or stand upright, the back free of any backrest.",
  "Let the shoulders drop and the arms hang; neither pull the shoulders back nor let them roll forward.",
  "Look straight ahead and breathe quietly.",
];
