import type { DimensionGuide } from "../dimension-entry.ts";
import { girthPosture } from "./postures.ts";
import {
  bellyDrawnIn,
  clothesUnderTape,
  tapeSlants,
  tapeTooLoose,
  tapeTooTight,
} from "./shared-girth-slips.ts";

/** Hip-belt girth: around the tops of the hip bones, where the belt of a pack sits. */
export const hipBeltGirth: DimensionGuide = {
  id: "hip-belt-girth",
  kind: "girth",
  definition:
    "The level girth of the body at the height of the tops of the iliac crests, where a hip belt sits.",
  use: "It chooses the hip belt: padding that meets or overlaps in front cannot be pulled tight, and padding that ends on the side presses.",
  landmarks: ["iliocristale", "crest-line-at-spine"],
  standards: [
    {
      standard: "NHANES anthropometry manual",
      term: "waist circumference",
      origin: "from memory",
      differs:
        "The survey of civilians takes its “waist” just above the top of the hip bone: in our words nearly this girth.",
    },
    {
      standard: "ISO 8559-1:2017",
      term: "top hip girth",
      clause: "5.3.12",
      origin: "second-hand",
      differs:
        "It lies half way between waist and hip level, in most people below the tops of the hip bones.",
    },
  ],
  posture: girthPosture,
  needs: [
    "A soft tape that has not stretched.",
    "Two small stickers for the tops of the hip bones.",
    "Trousers pushed below the hip bones; bare skin or one thin layer.",
  ],
  ways: [
    {
      tool: "tape",
      who: "self",
      suits: "Easy to take alone with a mirror; a helper adds little but a level back.",
      steps: [
        { text: "Find the top of the hip bone on each side and put a sticker on it." },
        { text: "Pass the tape round the back and bring it forward over both stickers." },
        { text: "Turn sideways to the mirror and set the tape level at the back." },
        {
          text: "Breathe out, let the belly be loose, close the tape so that it touches without denting, and read.",
        },
        {
          text: "Take the tape off, walk a few steps, and read twice more, each time with the hip bones found again.",
        },
      ],
    },
    {
      tool: "tape",
      who: "helper",
      suits: "When the hip bones are hard to feel, or bending to the mirror tilts the tape.",
      steps: [
        {
          text: "Say what you are going to do; the person may find the hip bones and hold the tape to them.",
          caution: "ask-first",
        },
        {
          text: "Pass the tape round from the side, set it level all round and bring the ends together in front.",
        },
        { text: "Wait for an ordinary breath out and read without pulling." },
        { text: "Take it off and read twice more." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "self",
      suits: "Without a tape: a cord that does not stretch and a long ruler or a marked floor.",
      steps: [
        { text: "Mark the tops of the hip bones and lay the cord round over both marks." },
        { text: "Let the cord cross over itself in front and pinch the crossing between two nails." },
        {
          text: "Take it off and read from nail to nail along a straight edge; add the pieces if the edge is short.",
        },
        { text: "Do it three times and write each reading down." },
      ],
    },
  ],
  slips: [
    {
      code: "hips-for-crest",
      what: "The tape was laid round the widest part of the seat, as for trousers or a skirt.",
      size: { direction: "+", fromMm: 30, toMm: 200, basis: "common practice, no source" },
      shows: "The reading equals the hip girth, and the belt turns out too large.",
      detect:
        "Feel under the tape at the side: it should lie on the top of the bone, not on the muscle below.",
      mend: "Move the tape up to the tops of the hip bones.",
    },
    {
      code: "waist-for-crest",
      what: "The tape slid up into the waist, where it is narrowest.",
      size: { direction: "-", fromMm: 10, toMm: 100, basis: "common practice, no source" },
      shows: "The reading equals the waist girth.",
      detect: "The soft side lies under the tape instead of bone.",
      mend: "Hold the tape down on both stickers while it is closed.",
    },
    {
      code: "front-point-for-crest",
      what: "The tape dropped in front to the points of the hip bones.",
      size: { direction: "+", fromMm: 5, toMm: 50, basis: "common practice, no source" },
      shows: "Readings are long and the tape slopes down in front.",
      detect: "Look from the side.",
      mend: "Set the tape level with the tops of the hip bones all round.",
    },
    { ...tapeSlants, size: { direction: "+", fromMm: 3, toMm: 25, basis: "common practice, no source" } },
    { ...tapeTooTight, size: { direction: "-", fromMm: 10, toMm: 50, basis: "common practice, no source" } },
    { ...tapeTooLoose, size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" } },
    {
      ...clothesUnderTape,
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
    },
    { ...bellyDrawnIn, size: { direction: "-", fromMm: 10, toMm: 50, basis: "common practice, no source" } },
    {
      code: "trouser-size-given",
      what: "The number on the label of the trousers was written down instead of a reading.",
      size: { direction: "-", fromMm: 20, toMm: 150, basis: "common practice, no source" },
      shows: "The number is round, even and small, and the same every time.",
      detect: "Ask whether a tape was used.",
      mend: "Take the tape; a label says what the maker wished, not what the body is.",
    },
  ],
};
