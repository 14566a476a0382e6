import type { DimensionGuide } from "../dimension-entry.ts";
import { girthPosture } from "./postures.ts";
import {
  bellyDrawnIn,
  clothesUnderTape,
  tapeSlants,
  tapeTooLoose,
  tapeTooTight,
} from "./shared-girth-slips.ts";

/** Waist girth of ISO: half way between the ribs and the hip bone. Surveys and shops use other levels. */
export const waistGirth: DimensionGuide = {
  id: "waist-girth",
  kind: "girth",
  definition: "The level girth of the body half way between the lowest rib and the top of the iliac crest.",
  use: "Some charts size a belt or a harness by it. A hip belt sits lower, on the hip bones, so take the hip-belt girth as well.",
  landmarks: ["lowest-rib", "natural-waist", "iliocristale"],
  standards: [
    { standard: "ISO 7250-1:2017", term: "waist circumference", origin: "second-hand" },
    { standard: "ISO 8559-1:2017", term: "waist girth", clause: "5.3.10", origin: "second-hand" },
    {
      standard: "NATICK/TR-15/007",
      term: "waist circumference (omphalion)",
      origin: "second-hand",
      differs: "The survey takes it at the height of the navel, lower than the standards do.",
    },
  ],
  posture: girthPosture,
  needs: [
    "A soft tape.",
    "Two stickers or a washable pen.",
    "Bare skin or one thin layer, nothing tight above it.",
  ],
  ways: [
    {
      tool: "tape",
      who: "self",
      suits: "Easy alone, with a mirror at the side.",
      steps: [
        {
          text: "Find the lowest rib and the top of the hip bone on the same side and mark the middle between them.",
        },
        { text: "Pass the tape round at the height of the mark and level it in the mirror." },
        {
          text: "Breathe out, let the belly be loose, close the tape so that it touches without denting, and read.",
        },
        { text: "Take it off and read twice more, with the mark made anew." },
      ],
    },
    {
      tool: "tape",
      who: "helper",
      suits: "When the ribs are hard to find alone.",
      steps: [
        {
          text: "Say what you are going to do; the person can find the bones and hold the tape.",
          caution: "ask-first",
        },
        {
          text: "Stand at the side, level the tape at the mark, and read at the end of an ordinary breath out.",
        },
        { text: "Read twice more, each time with the tape taken off." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "self",
      suits: "Without a tape.",
      steps: [
        { text: "Lay a cord that does not stretch round at the mark and cross its ends in front." },
        { text: "Pinch the crossing, take the cord off and read along a straight edge." },
        { text: "Do it three times and write each reading down." },
      ],
    },
  ],
  slips: [
    {
      code: "another-waist",
      what: "Another “waist” was taken: the narrowest place, the navel or the waistband.",
      size: { direction: "both", fromMm: 10, toMm: 80, basis: "common practice, no source" },
      shows: "Readings of different days differ by more than breathing explains.",
      detect: "Ask where the tape lay: between rib and hip bone, at the navel, or where the trousers close?",
      mend: "Mark the middle between rib and hip bone and keep to it; write beside the number where it was taken.",
    },
    {
      code: "read-alone",
      what: "Alone, the tape was set, pulled or read as it was most convenient.",
      size: {
        direction: "both",
        fromMm: 5,
        toMm: 110,
        basis: {
          source: "self-waist-2014",
          finding:
            "622 people read their own waist 59.8 mm too large on average, with a standard deviation of 48.2 mm; elsewhere 125 people read 8.1 mm too small (self-girths-2013). The range is the mean plus one standard deviation.",
        },
      },
      shows: "One person's readings agree among themselves and differ from a helper's.",
      detect: "Compare one reading with a helper's.",
      mend: "Find both bones first; do not go by where trousers sit.",
    },
    { ...bellyDrawnIn, size: { direction: "-", fromMm: 10, toMm: 80, basis: "common practice, no source" } },
    { ...tapeSlants, size: { direction: "+", fromMm: 3, toMm: 25, basis: "common practice, no source" } },
    { ...tapeTooTight, size: { direction: "-", fromMm: 10, toMm: 60, basis: "common practice, no source" } },
    { ...tapeTooLoose, size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" } },
    {
      ...clothesUnderTape,
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
    },
    {
      code: "after-a-meal",
      what: "The reading was taken straight after a large meal.",
      size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" },
      shows: "Evening readings are longer than morning ones.",
      detect: "Ask when the last meal was.",
      mend: "Read again some hours later, or leave a hand's breadth of belt to spare.",
    },
  ],
};
