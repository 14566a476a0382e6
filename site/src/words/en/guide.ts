/** Headings of the guides to each dimension, and the labels of the drawings. */
export const guide = {
  what: "What it is",
  points: "Find the places",
  check: "Make sure",
  ways: "Take it",
  slips: "What goes wrong",
  size: "about {from} to {to} mm {side}",
  tooLong: "too long",
  tooShort: "too short",
  either: "either way",
  mend: "Mend it",
  care: "Take care",
  stand: "Stand like this",
  more: "Posture, other ways, what goes wrong",
  self: "alone",
  helper: "with a helper",
  tools: { tape: "tape", "cord-and-ruler": "cord and ruler", "short-rule": "short rule" },
  backTitle:
    "A back from behind: the tape runs down the middle of the spine from C7, the bump at the base of the neck, to the line between the tops of the hip bones.",
  sideTitle:
    "A back from the side: the tape follows the curve into the hollow of the lower back, and does not bridge it.",
  girthTitle:
    "Hips from the front: the hip-belt girth runs level over the tops of the hip bones, the hip girth lower down, where the seat stands out furthest.",
  c7: "C7",
  crest: "tops of the hip bones",
  alongSpine: "tape",
  hollow: "into the hollow",
  beltGirth: "hip-belt girth",
  hipGirth: "hip girth",
};
