import type { DimensionGuide } from "../dimension-entry.ts";
import { uprightPosture } from "./postures.ts";
import { bookTilted, shoesOn, slouched, tapeLeans, timeOfDay } from "./shared-height-slips.ts";

/** Cervicale height: floor to C7. With the iliac-crest height it stands in for the torso length. */
export const cervicaleHeight: DimensionGuide = {
  id: "cervicale-height",
  kind: "straight height",
  definition: "The straight height from the floor to C7, the bump at the base of the neck.",
  use: "Less the iliac-crest height it gives a stand-in for the torso length that needs no tape on the back. Straight is shorter than along the curve, so the stand-in is a little short.",
  landmarks: ["cervicale", "floor"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "back neck height", origin: "from memory" },
    { standard: "NATICK/TR-15/007", term: "cervicale height", origin: "from memory" },
  ],
  posture: uprightPosture,
  needs: [
    "A wall or a door frame, and a hard floor.",
    "A stiff ruler, or a book with a straight edge.",
    "A tape of two metres or a folding rule, fixed upright to the wall; a sticker.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The best way: the helper sees that ruler and head are level.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Find C7 and mark its middle with a sticker.", caution: "neck-movement" },
        {
          text: "Let the person stand upright beside the tape on the wall, back towards you, looking straight ahead.",
        },
        { text: "Hold the ruler level with one end on the mark and the other on the tape, and read." },
        {
          text: "Let the person step away and come back; read three times, and once more with C7 found anew.",
        },
      ],
    },
    {
      tool: "short-rule",
      who: "helper",
      suits: "When there is only a short rule.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Find C7 and mark its middle with a sticker.", caution: "neck-movement" },
        {
          text: "Hold a book level with one edge on the mark and its spine flat on the wall, and mark the wall.",
        },
        {
          text: "Draw a line straight down along a thread with a weight, lay the rule along it end to end, and add the pieces.",
        },
        { text: "Do it three times, with C7 found anew." },
      ],
    },
  ],
  helperReason:
    "Alone nobody can watch both the ruler and the head, and the bump touches no wall. Take the torso length itself with a cord instead.",
  slips: [
    {
      code: "t1-for-c7",
      what: "The bump below C7 was taken for it.",
      size: { direction: "-", fromMm: 15, toMm: 30, basis: "common practice, no source" },
      shows: "All readings of one session are short together.",
      detect: "Let the head turn with the finger on the mark: T1 stays still.",
      mend: "Find C7 anew and read again.",
    },
    {
      code: "c6-for-c7",
      what: "The bump above C7 was taken for it.",
      size: { direction: "+", fromMm: 12, toMm: 25, basis: "common practice, no source" },
      shows: "All readings of one session are long together.",
      detect: "Let the head tip back: C6 slides away.",
      mend: "Find C7 anew and read again.",
    },
    {
      code: "head-bent",
      what: "The head stayed bent forward, which draws the bump up with the skin or lets it sink with the neck.",
      size: { direction: "both", fromMm: 3, toMm: 20, basis: "common practice, no source" },
      shows: "Readings change when the person looks ahead.",
      detect: "Look from the side.",
      mend: "Look at something at eye level and read again.",
    },
    { ...shoesOn, size: { direction: "+", fromMm: 10, toMm: 45, basis: "common practice, no source" } },
    { ...bookTilted, size: { direction: "both", fromMm: 5, toMm: 25, basis: "common practice, no source" } },
    { ...tapeLeans, size: { direction: "+", fromMm: 1, toMm: 8, basis: "common practice, no source" } },
    { ...slouched, size: { direction: "-", fromMm: 5, toMm: 30, basis: "common practice, no source" } },
    { ...timeOfDay, size: { direction: "both", fromMm: 3, toMm: 18, basis: "assumption" } },
  ],
};
