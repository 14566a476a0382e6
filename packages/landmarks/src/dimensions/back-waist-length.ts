import type { DimensionGuide } from "../dimension-entry.ts";
import { uprightPosture } from "./postures.ts";

/** Back waist length: the dressmaker's back length, C7 to the waist. */
export const backWaistLength: DimensionGuide = {
  id: "back-waist-length",
  kind: "length along the body",
  definition:
    "The length along the middle of the back from C7 to the waist level, half way between ribs and hip bone.",
  use: "Clothing sizes use it. It ends above the hip bones, so a pack chosen by it comes out too short: it is here to be told apart from the torso length.",
  landmarks: ["cervicale", "natural-waist"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "back neck point to waist", clause: "5.4.5", origin: "second-hand" },
    {
      standard: "NATICK/TR-15/007",
      term: "waist back length (omphalion)",
      origin: "second-hand",
      differs: "The survey ends at the height of the navel, lower than the waist of the standards.",
    },
  ],
  posture: uprightPosture,
  needs: ["A soft tape.", "A cord or an elastic tied level round the waist.", "Two stickers."],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The best way.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Find C7 and mark it.", caution: "neck-movement" },
        { text: "Tie the cord round at the waist level and make it level." },
        { text: "Lay the tape from the mark down the middle of the spine, into the hollow, to the cord." },
        { text: "Read with the head level; do it three times." },
      ],
    },
    {
      tool: "tape",
      who: "self",
      suits: "Alone, with the tape plastered to C7 and an elastic round the waist.",
      steps: [
        {
          text: "Find C7, put a sticker on it and plaster the zero of the tape there.",
          caution: "neck-movement",
        },
        { text: "Let the tape hang along the spine, under the elastic." },
        { text: "Stand straight, pinch the tape at the elastic, take it off and read; do it four times." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "helper",
      suits: "Without a tape.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Mark C7 and the waist level.", caution: "neck-movement" },
        { text: "Lay a cord that does not stretch along the spine between the marks and pinch it." },
        { text: "Read it along a ruler; do it three times." },
      ],
    },
  ],
  slips: [
    {
      code: "crest-for-waist",
      what: "The length was taken to the hip bones: that is the torso length.",
      size: { direction: "+", fromMm: 30, toMm: 90, basis: "common practice, no source" },
      shows: "The reading equals the torso length.",
      detect: "Bone under the cord at the side means that it is too low.",
      mend: "Name the number torso length, and keep it: it is the more useful one.",
    },
    {
      code: "navel-for-waist",
      what: "The length was taken to the height of the navel.",
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
      shows: "Readings are long, steadily.",
      detect: "Compare the cord with the middle between rib and hip bone.",
      mend: "Move the cord up to the middle.",
    },
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
      what: "The head stayed bent forward while the tape was read.",
      size: { direction: "+", fromMm: 5, toMm: 20, basis: "common practice, no source" },
      shows: "The number falls when the person looks ahead.",
      detect: "Read once with the chin down and once looking ahead.",
      mend: "Keep the readings with a level head.",
    },
    {
      code: "tape-bridges-hollow",
      what: "The tape spanned the hollow of the back instead of lying in it.",
      size: { direction: "-", fromMm: 3, toMm: 15, basis: "assumption" },
      shows: "Readings are a little short.",
      detect: "Try to slip a finger between tape and back.",
      mend: "Press the tape into the hollow with a flat hand.",
    },
  ],
};
