import type { DimensionGuide } from "../dimension-entry.ts";
import { girthPosture } from "./postures.ts";
import { clothesUnderTape, tapeSlants, tapeTooLoose, tapeTooTight } from "./shared-girth-slips.ts";

/** Underbust girth: around the ribs below the breasts. */
export const underbustGirth: DimensionGuide = {
  id: "underbust-girth",
  kind: "girth",
  definition:
    "The level girth of the ribs just below the breasts, in the crease; without one, at the lower end of the breastbone.",
  use: "Together with the chest girth it tells how much the chest stands out, which decides where straps and a chest strap can lie without pressing.",
  landmarks: ["underbust-level"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "under bust girth", clause: "5.3.8", origin: "second-hand" },
  ],
  posture: girthPosture,
  needs: [
    "A soft tape.",
    "A mirror.",
    "Bare skin, or one thin layer and the brassiere that will be worn with the pack.",
  ],
  ways: [
    {
      tool: "tape",
      who: "self",
      suits: "The usual way, and the more comfortable one for many.",
      steps: [
        { text: "Lay the tape round in the crease below the breasts and level it in the mirror." },
        { text: "Lower the arms as far as you can, breathe out, and read where the tape meets." },
        { text: "Take it off and read twice more." },
      ],
    },
    {
      tool: "tape",
      who: "helper",
      suits:
        "When the tape will not stay level at the back; the person holds the tape in front, the helper reads.",
      steps: [
        { text: "Say what you are going to do, and let the person place the tape.", caution: "ask-first" },
        { text: "Level it at the back, wait for an ordinary breath out, and read." },
        { text: "Read twice more, each time with the tape taken off." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "self",
      suits: "Without a tape.",
      steps: [
        { text: "Lay a cord that does not stretch round in the crease and cross its ends in front." },
        { text: "Pinch the crossing, take the cord off and read along a straight edge; do it three times." },
      ],
    },
  ],
  slips: [
    {
      code: "breast-under-tape",
      what: "The tape caught the lower part of the breasts.",
      size: { direction: "+", fromMm: 10, toMm: 80, basis: "common practice, no source" },
      shows: "Readings are long and scatter.",
      detect: "Feel with a thumb: ribs, not soft tissue, should lie under the tape.",
      mend: "Lift the breasts a little, set the tape in the crease and let go.",
    },
    {
      code: "band-size-given",
      what: "The band number of a brassiere was written down instead of a reading.",
      size: { direction: "both", fromMm: 10, toMm: 130, basis: "common practice, no source" },
      shows: "The number is round, and the same every time.",
      detect:
        "Ask whether a tape was used; band numbers follow several systems, in centimetres and in inches.",
      mend: "Take the tape.",
    },
    {
      code: "deep-breath",
      what: "The breath was held in.",
      size: { direction: "+", fromMm: 10, toMm: 50, basis: "common practice, no source" },
      shows: "Readings swing with the breath.",
      detect: "Watch the tape through two breaths.",
      mend: "Read at the end of an ordinary breath out.",
    },
    { ...tapeSlants, size: { direction: "+", fromMm: 3, toMm: 25, basis: "common practice, no source" } },
    { ...tapeTooTight, size: { direction: "-", fromMm: 5, toMm: 40, basis: "common practice, no source" } },
    { ...tapeTooLoose, size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" } },
    {
      ...clothesUnderTape,
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
    },
  ],
};
