import type { DimensionGuide } from "../dimension-entry.ts";
import { girthPosture } from "./postures.ts";
import { clothesUnderTape, tapeTooLoose, tapeTooTight } from "./shared-girth-slips.ts";

/** Neck-base girth: the necklace line round the foot of the neck. */
export const neckBaseGirth: DimensionGuide = {
  id: "neck-base-girth",
  kind: "girth",
  definition:
    "The girth around the base of the neck: over C7 behind, over the side neck points, and over the top of the pit of the throat in front. It slopes down to the front.",
  use: "It tells how far apart the straps have to start so that they clear the neck.",
  landmarks: ["cervicale", "lateral-neck-point", "front-neck-point"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "neck base girth", clause: "5.3.3", origin: "second-hand" },
    { standard: "NATICK/TR-15/007", term: "neck circumference, base", origin: "from memory" },
  ],
  posture: girthPosture,
  needs: [
    "A thin chain or a necklace that lies by itself.",
    "A narrow soft tape, or a ruler to lay the chain on.",
    "An open collar.",
  ],
  ways: [
    {
      tool: "cord-and-ruler",
      who: "helper",
      suits:
        "The best way: a thin chain finds the line of the neck base by its own weight, which a tape does not.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Find and mark C7.", caution: "neck-movement" },
        {
          text: "Lay the chain round the neck, over C7 behind and over the top of the pit of the throat in front.",
        },
        { text: "Let it rest without pulling and mark on it where its ends meet." },
        { text: "Take it off, lay it straight along a ruler, and read; do it three times." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "self",
      suits: "Alone, with a chain and a mirror.",
      steps: [
        {
          text: "Lay the chain round the base of the neck and shake it lightly, so that it finds its own line.",
        },
        { text: "Pinch it in front where its ends meet, take it off, and read along a ruler." },
        { text: "Do it three times and write each reading down." },
      ],
    },
    {
      tool: "tape",
      who: "helper",
      suits: "With a narrow tape set on its edge; it kinks easily.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        {
          text: "Stand the tape on its edge along the line from C7 to the top of the pit of the throat and back.",
        },
        { text: "Read where it meets without tightening it round the neck, three times." },
      ],
    },
  ],
  slips: [
    {
      code: "collar-for-base",
      what: "The neck was measured higher up, as for a shirt collar.",
      size: { direction: "-", fromMm: 20, toMm: 90, basis: "common practice, no source" },
      shows: "The number equals the collar size of a shirt.",
      detect: "Does the line touch C7 behind? A collar line lies above it.",
      mend: "Let the chain sink to the foot of the neck.",
    },
    {
      code: "c7-missed",
      what: "The chain lay above or below C7 behind.",
      size: { direction: "both", fromMm: 5, toMm: 25, basis: "common practice, no source" },
      shows: "Readings scatter.",
      detect: "Feel for C7 under the chain.",
      mend: "Mark C7 first.",
    },
    { ...tapeTooTight, size: { direction: "-", fromMm: 3, toMm: 20, basis: "common practice, no source" } },
    { ...tapeTooLoose, size: { direction: "+", fromMm: 3, toMm: 20, basis: "common practice, no source" } },
    {
      ...clothesUnderTape,
      size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" },
    },
  ],
};
