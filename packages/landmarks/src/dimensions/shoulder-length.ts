import type { DimensionGuide } from "../dimension-entry.ts";
import { shoulderPosture } from "./postures.ts";

/** Shoulder length: where a strap has room to lie. */
export const shoulderLength: DimensionGuide = {
  id: "shoulder-length",
  kind: "length along the body",
  definition:
    "The length along the top of the shoulder from the side neck point to the bony corner of the shoulder.",
  use: "It is the room that a strap has between neck and arm.",
  landmarks: ["lateral-neck-point", "acromion"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "shoulder length", origin: "from memory" },
    { standard: "NATICK/TR-15/007", term: "shoulder length", origin: "from memory" },
  ],
  posture: shoulderPosture,
  needs: [
    "A soft tape.",
    "A thin chain for the base of the neck.",
    "Two stickers; the shoulder bare or under a thin layer.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The best way; take the right side, and the left one if the shoulders differ.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Mark the side neck point on the line of the chain, and the bony corner of the shoulder." },
        { text: "Lay the tape along the top of the shoulder from mark to mark and read; do it three times." },
      ],
    },
    {
      tool: "tape",
      who: "self",
      suits:
        "Alone, in front of a mirror, with the hand of the other side; a little too short as a rule, since reaching lifts the shoulder.",
      steps: [
        { text: "Mark both points in the mirror with the hand of the other side." },
        { text: "Plaster the zero of the tape to the neck mark and lay the tape over the shoulder." },
        { text: "Let the arm of that side hang and read at the corner in the mirror; do it three times." },
      ],
    },
    {
      tool: "short-rule",
      who: "helper",
      suits: "A bendable school ruler is long enough for most shoulders.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        {
          text: "Mark both points, bend the ruler onto the shoulder between them, and read; do it three times.",
        },
      ],
    },
  ],
  slips: [
    {
      code: "seam-for-bone",
      what: "The seams of a shirt were taken for neck point and shoulder corner.",
      size: { direction: "both", fromMm: 5, toMm: 40, basis: "common practice, no source" },
      shows: "Readings change with the shirt.",
      detect: "Feel for the bone under the seam.",
      mend: "Mark bone and muscle edge, not cloth.",
    },
    {
      code: "neck-point-too-high",
      what: "The neck end was taken too far up the neck.",
      size: { direction: "+", fromMm: 5, toMm: 20, basis: "common practice, no source" },
      shows: "Readings are long.",
      detect: "Lay the chain round the neck: the mark should lie on it.",
      mend: "Move the mark to the chain.",
    },
    {
      code: "arm-bone-for-acromion",
      what: "The head of the arm bone was taken for the corner.",
      size: { direction: "+", fromMm: 8, toMm: 20, basis: "common practice, no source" },
      shows: "Readings are long and change when the arm turns.",
      detect: "Let the arm turn: the mark must not roll.",
      mend: "Mark the edge of the shelf above.",
    },
    {
      code: "shoulder-raised",
      what: "The shoulder was raised.",
      size: { direction: "-", fromMm: 3, toMm: 15, basis: "common practice, no source" },
      shows: "Readings are short and rise after a sigh.",
      detect: "Ask for a shrug and a sigh.",
      mend: "Read after the sigh.",
    },
  ],
};
