import type { Landmark } from "../landmark-entry.ts";

/** The upper and the lower end of the body. */
export const endLandmarks: readonly Landmark[] = [
  {
    id: "vertex",
    name: "vertex",
    everydayName: "the top of the head",
    kind: "bone",
    definition: "The highest point of the head in the middle line while the head is held level.",
    standards: [{ standard: "ISO 7250-1:2017", term: "vertex", origin: "from memory" }],
    find: [
      "Hold the head level: the lower rim of the eye socket and the notch above the little flap of the ear are equally high.",
      "Lower a book onto the head with one edge flat against the wall, pressing the hair down, until it rests on bone.",
    ],
    check: ["Nod a little up and down: if the book rises, the head was not level."],
    confusions: [
      {
        name: "the hair",
        tell: "Hair gives when the book presses on it; the skull does not.",
        shifts: [
          { dimension: "stature", direction: "+", fromMm: 5, toMm: 40, basis: "common practice, no source" },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "floor",
    name: "floor",
    everydayName: "the floor under bare feet",
    kind: "level",
    definition: "The level on which the bare soles stand, hard and flat.",
    standards: [],
    find: ["Stand on a hard floor without shoes and thick socks, away from carpets and skirting boards."],
    check: ["A glass of water set down beside the feet stands level."],
    confusions: [
      {
        name: "the sole of a shoe",
        tell: "Shoes come off, insoles too.",
        shifts: [
          { dimension: "stature", direction: "+", fromMm: 10, toMm: 45, basis: "common practice, no source" },
          {
            dimension: "cervicale-height",
            direction: "+",
            fromMm: 10,
            toMm: 45,
            basis: "common practice, no source",
          },
          {
            dimension: "iliac-crest-height",
            direction: "+",
            fromMm: 10,
            toMm: 45,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
];
