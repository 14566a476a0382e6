import type { DimensionGuide } from "../dimension-entry.ts";
import { shoulderPosture } from "./postures.ts";

/** Shoulder breadth: bone to bone, straight across. */
export const shoulderBreadth: DimensionGuide = {
  id: "shoulder-breadth",
  kind: "breadth",
  definition: "The straight distance between the outermost points of the two bony corners of the shoulders.",
  use: "It tells how far apart the straps may lie: straps set too wide slip off, set too narrow they press on the neck. Broad shoulders speak for the longer of two harnesses.",
  landmarks: ["acromion"],
  standards: [
    { standard: "ISO 7250-1:2017", term: "shoulder (biacromial) breadth", origin: "from memory" },
    {
      standard: "NATICK/TR-15/007",
      term: "biacromial breadth",
      origin: "second-hand",
      differs: "The survey measured it seated.",
    },
    {
      standard: "ISO 8559-1:2017",
      term: "across back shoulder width (through the back neck point)",
      clause: "5.4.3",
      origin: "second-hand",
      differs: "It goes from corner to corner over C7, along the body, and is therefore longer.",
    },
  ],
  posture: shoulderPosture,
  needs: [
    "Two books or two set squares.",
    "A tape or a ruler.",
    "Two stickers and a thin layer or none on the shoulders.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The only good way: the corners lie where your own hands cannot mark them without moving them.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Stand behind, find both corners and mark them." },
        { text: "Hold the tape straight across from mark to mark through the air, not bent round the back." },
        { text: "Read above the marks with one eye closed; do it three times, with the marks made anew." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "helper",
      suits: "Without a tape.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        {
          text: "Stretch a cord straight across from mark to mark, pinch both ends, and read it along a ruler.",
        },
        { text: "Do it three times, with the marks made anew." },
      ],
    },
  ],
  helperReason:
    "Reaching for your own shoulder lifts and turns its corner, so that a mark made alone is wrong; let somebody else find it.",
  slips: [
    {
      code: "round-the-back",
      what: "The tape followed the curve of the back instead of going straight across.",
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
      shows: "Readings are long, steadily.",
      detect: "Is there air between the tape and the back?",
      mend: "Hold the tape straight through the air.",
    },
    {
      code: "arm-bone-for-acromion",
      what: "The heads of the arm bones were taken for the corners.",
      size: { direction: "+", fromMm: 15, toMm: 40, basis: "common practice, no source" },
      shows: "Readings are long and change when the arms turn.",
      detect: "Let the arms turn: the mark must not roll.",
      mend: "Find the edge of the shelf above and mark it.",
    },
    {
      code: "collarbone-for-acromion",
      what: "The knobs at the outer ends of the collarbones were taken for the corners.",
      size: { direction: "-", fromMm: 30, toMm: 70, basis: "common practice, no source" },
      shows: "Readings are short.",
      detect: "Outside the knob there is a step down to a flat shelf.",
      mend: "Go over the step to the outer edge of the shelf.",
    },
    {
      code: "shoulders-pulled-back",
      what: "The shoulders were pulled back, rolled forward or raised.",
      size: { direction: "both", fromMm: 5, toMm: 30, basis: "common practice, no source" },
      shows: "Readings scatter.",
      detect: "Ask for one shrug and a sigh: if the number changes, they were held.",
      mend: "Read after the sigh.",
    },
  ],
};
