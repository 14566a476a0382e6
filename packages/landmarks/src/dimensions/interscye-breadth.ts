import type { DimensionGuide } from "../dimension-entry.ts";
import { shoulderPosture } from "./postures.ts";

/** Interscye breadth: across the back between the armpit folds. */
export const interscyeBreadth: DimensionGuide = {
  id: "interscye-breadth",
  kind: "length along the body",
  definition:
    "The level length across the back, along the skin, between the upper ends of the two back armpit folds.",
  use: "It tells how broad the back is where the back panel of a pack lies.",
  landmarks: ["back-armpit-fold"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "back width", origin: "from memory" },
    { standard: "NATICK/TR-15/007", term: "interscye I", origin: "from memory" },
  ],
  posture: shoulderPosture,
  needs: [
    "A soft tape.",
    "A short ruler to slip under the arm.",
    "Two stickers; bare skin or one thin layer.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The only way: nobody can reach across the own back without spreading it.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Mark the upper end of both armpit folds with the arms hanging down." },
        { text: "Lay the tape level across the back from mark to mark, touching the skin." },
        { text: "Read with the shoulders loose; do it three times, with the marks made anew." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "helper",
      suits: "Without a tape.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        {
          text: "Lay a cord that does not stretch across from mark to mark, pinch it and read it along a ruler; do it three times.",
        },
      ],
    },
  ],
  helperReason: "Reaching behind spreads the shoulder blades and makes the back broader than it is at rest.",
  slips: [
    {
      code: "shoulders-rolled-forward",
      what: "The shoulders rolled forward or the arms reached ahead.",
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
      shows: "Readings are long and fall after a sigh.",
      detect: "Look from the side.",
      mend: "Let the arms hang and read again.",
    },
    {
      code: "shoulders-pulled-back",
      what: "The person stood to attention with the shoulder blades drawn together.",
      size: { direction: "-", fromMm: 10, toMm: 60, basis: "common practice, no source" },
      shows: "Readings are short and rise after a sigh.",
      detect: "Look for a furrow between the shoulder blades.",
      mend: "Ask for a sigh and read again.",
    },
    {
      code: "mark-on-the-arm",
      what: "A mark lay on the arm, outside the fold.",
      size: { direction: "+", fromMm: 10, toMm: 40, basis: "common practice, no source" },
      shows: "Readings are long and change when the arms move.",
      detect: "Lift the arm a little: a mark on the arm goes along.",
      mend: "Mark the fold itself.",
    },
    {
      code: "tape-not-level",
      what: "The tape ran slantwise or sagged.",
      size: { direction: "+", fromMm: 2, toMm: 10, basis: "common practice, no source" },
      shows: "Readings scatter upwards.",
      detect: "Compare the heights of both ends.",
      mend: "Level the tape and let it touch.",
    },
  ],
};
