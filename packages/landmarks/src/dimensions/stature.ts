import type { DimensionGuide } from "../dimension-entry.ts";
import { uprightPosture } from "./postures.ts";
import { bookTilted, shoesOn, slouched, tapeLeans, timeOfDay } from "./shared-height-slips.ts";

/** Stature: body height. */
export const stature: DimensionGuide = {
  id: "stature",
  kind: "straight height",
  definition:
    "The straight height from the floor to the top of the head, standing upright with the head level.",
  use: "It sizes no pack by itself: people of one height differ by more than a size in torso length. It tells what torso length to expect, so that a slip is noticed.",
  landmarks: ["vertex", "floor"],
  standards: [
    { standard: "ISO 7250-1:2017", term: "stature (body height)", origin: "from memory" },
    { standard: "NATICK/TR-15/007", term: "stature", origin: "second-hand" },
  ],
  posture: [
    ...uprightPosture,
    "Heels, seat and shoulders may touch the wall; the head need not. Do not stretch or rise on the toes.",
  ],
  needs: [
    "A wall without a skirting board and a hard floor.",
    "A hardback book or a set square.",
    "A tape of two metres or more, or a folding rule, and a pencil.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The best way; it takes a minute.",
      steps: [
        { text: "Stand with the back to the wall as described, hair pressed flat." },
        {
          text: "Hold the book upright with its spine flat against the wall, above the head, and lower it until it rests on the head.",
        },
        { text: "Mark the wall at the lower edge of the book and let the person step away." },
        {
          text: "Read from the floor straight up to the mark, to the nearest half centimetre or quarter inch.",
        },
        { text: "Do it three times." },
      ],
    },
    {
      tool: "tape",
      who: "self",
      suits: "Alone; keep looking straight ahead while you reach up.",
      steps: [
        { text: "Stand with your back to the wall, heels close to it, looking straight ahead." },
        {
          text: "Slide the book down the wall with both hands until it rests on your head, one edge flat on the wall.",
        },
        { text: "Hold the book still, step from under it and mark its lower edge." },
        { text: "Read from the floor straight up to the mark; do it three times." },
      ],
    },
    {
      tool: "short-rule",
      who: "helper",
      suits: "When there is only a short rule: the wall keeps the marks in line.",
      steps: [
        { text: "Mark the height on the wall as with the tape." },
        { text: "Draw a line straight down to the floor along a thread with a weight." },
        { text: "Lay the rule along the line end to end, marking each joint, and add the pieces." },
        { text: "Do it three times." },
      ],
    },
  ],
  slips: [
    { ...shoesOn, size: { direction: "+", fromMm: 10, toMm: 45, basis: "common practice, no source" } },
    {
      code: "head-not-level",
      what: "The chin was raised or lowered.",
      size: { direction: "both", fromMm: 3, toMm: 15, basis: "common practice, no source" },
      shows: "Readings scatter by a finger's breadth.",
      detect: "Look from the side: eye socket and ear notch equally high?",
      mend: "Look at something at eye level.",
    },
    {
      code: "hair-not-pressed",
      what: "The book rested on hair, a plait or a hat.",
      size: { direction: "+", fromMm: 5, toMm: 40, basis: "common practice, no source" },
      shows: "The reading drops when the book is pressed down.",
      detect: "Press lightly: hair gives.",
      mend: "Undo what stands up and press the book onto the head.",
    },
    {
      code: "height-from-a-document",
      what: "The height was copied from a document or from memory.",
      size: { direction: "+", fromMm: 5, toMm: 40, basis: "common practice, no source" },
      shows: "The number is round and does not scatter.",
      detect: "Ask when it was last measured, and how.",
      mend: "Measure once.",
    },
    { ...bookTilted, size: { direction: "both", fromMm: 3, toMm: 15, basis: "common practice, no source" } },
    { ...tapeLeans, size: { direction: "+", fromMm: 1, toMm: 8, basis: "common practice, no source" } },
    { ...slouched, size: { direction: "-", fromMm: 5, toMm: 30, basis: "common practice, no source" } },
    {
      ...timeOfDay,
      size: {
        direction: "both",
        fromMm: 5,
        toMm: 20,
        basis: {
          source: "daily-shrinkage-1987",
          finding:
            "Between rising and going to bed the height of ten young women fell by 15.4 mm on average. The range around it is an assumption.",
        },
      },
    },
  ],
};
