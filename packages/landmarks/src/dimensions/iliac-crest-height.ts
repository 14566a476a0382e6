import type { DimensionGuide } from "../dimension-entry.ts";
import { uprightPosture } from "./postures.ts";
import { bookTilted, shoesOn, tapeLeans } from "./shared-height-slips.ts";

/** Iliac-crest height: floor to the top of the hip bone. */
export const iliacCrestHeight: DimensionGuide = {
  id: "iliac-crest-height",
  kind: "straight height",
  definition: "The straight height from the floor to the top of the iliac crest at the side.",
  use: "Taken from the cervicale height it gives a stand-in for the torso length; by itself it tells where a hip belt will sit.",
  landmarks: ["iliocristale", "floor"],
  standards: [
    { standard: "NATICK/TR-15/007", term: "iliocristale height", origin: "from memory" },
    {
      standard: "ISO 7250-1:2017",
      term: "iliac spine height",
      origin: "from memory",
      differs: "It goes to the point of the hip bone in front, which lies several centimetres lower.",
    },
  ],
  posture: uprightPosture,
  needs: [
    "A wall or a door frame, and a hard floor.",
    "A stiff ruler or a book with a straight edge; a tape or rule fixed upright.",
    "Trousers pushed below the hip bones.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The best way: nobody has to bend.",
      steps: [
        {
          text: "Say what you are going to do; the person may find the hip bone and place the mark.",
          caution: "ask-first",
        },
        { text: "Mark the top of the iliac crest on the right side; the survey uses the right one." },
        { text: "Let the person stand upright with that side next to the tape." },
        { text: "Hold the ruler level from the mark to the tape and read." },
        { text: "Read three times, with the mark made anew each time; if the left side differs, note both." },
      ],
    },
    {
      tool: "tape",
      who: "self",
      suits: "Alone it works well: the hand that feels the bone holds the ruler.",
      steps: [
        { text: "Stand upright beside the tape, the side of the body close to the wall." },
        {
          text: "Find the top of the hip bone and lay the edge of a book on it, the book's spine flat against the wall.",
        },
        { text: "Press the book to the wall, step away, and read at its lower edge." },
        { text: "Do it three times, with the bone found anew." },
      ],
    },
  ],
  slips: [
    {
      code: "soft-tissue-for-crest",
      what: "The ruler rested on soft tissue above the bone.",
      size: { direction: "+", fromMm: 5, toMm: 35, basis: "assumption" },
      shows: "Readings are long, and fall when the hand presses more firmly.",
      detect: "Press and slide down once more: if it sinks, it was not bone.",
      mend: "Press kindly to the bone and read again.",
    },
    {
      code: "front-point-for-crest",
      what: "The knob of the hip bone in front was taken for the top of the crest.",
      size: { direction: "-", fromMm: 40, toMm: 110, basis: "common practice, no source" },
      shows: "The stand-in for the torso length comes out far too long.",
      detect: "Follow the bone backwards and upwards: if it rises, you were in front.",
      mend: "Go to the highest point at the side.",
    },
    {
      code: "waistband-for-crest",
      what: "The height of the waistband was taken.",
      size: { direction: "both", fromMm: 20, toMm: 80, basis: "common practice, no source" },
      shows: "Readings change with the trousers.",
      detect: "Push the waistband down and feel for the bone.",
      mend: "Measure to the bone.",
    },
    {
      code: "weight-on-one-leg",
      what: "The weight rested on one leg, which tilts the hips.",
      size: { direction: "both", fromMm: 10, toMm: 40, basis: "common practice, no source" },
      shows: "Left and right differ, and change places when the weight shifts.",
      detect: "Rock from foot to foot and settle in the middle.",
      mend: "Read both sides and take the height half way between.",
    },
    { ...shoesOn, size: { direction: "+", fromMm: 10, toMm: 45, basis: "common practice, no source" } },
    { ...bookTilted, size: { direction: "both", fromMm: 3, toMm: 15, basis: "common practice, no source" } },
    { ...tapeLeans, size: { direction: "+", fromMm: 1, toMm: 6, basis: "common practice, no source" } },
  ],
};
