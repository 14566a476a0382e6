import type { DimensionGuide } from "../dimension-entry.ts";
import { uprightPosture } from "./postures.ts";
import { bookTilted, shoesOn, slouched, tapeLeans } from "./shared-height-slips.ts";

/** Suprasternale height: floor to the pit of the throat. */
export const suprasternaleHeight: DimensionGuide = {
  id: "suprasternale-height",
  kind: "straight height",
  definition: "The straight height from the floor to the notch in the top edge of the breastbone.",
  use: "It tells where a chest strap can lie, and is a check on the cervicale height: the notch lay lower than C7 in everybody of the survey half that we looked at.",
  landmarks: ["suprasternale", "floor"],
  standards: [{ standard: "NATICK/TR-15/007", term: "suprasternale height", origin: "from memory" }],
  posture: uprightPosture,
  needs: [
    "A wall or a door frame, and a hard floor.",
    "A stiff ruler or a book with a straight edge; a tape or rule fixed upright.",
    "An open collar.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The best way.",
      steps: [
        {
          text: "Say what you are going to do; let the person lay a finger in the notch.",
          caution: "ask-first",
        },
        { text: "Mark the edge of the bone, never pressing on the throat above it." },
        { text: "Let the person stand upright beside the tape on the wall." },
        { text: "Hold the ruler level from the mark to the tape and read, three times." },
      ],
    },
    {
      tool: "tape",
      who: "self",
      suits: "Alone, facing the door frame, eyes level.",
      steps: [
        {
          text: "Stand upright facing the edge of the frame with the tape on it, and look past it straight ahead.",
        },
        { text: "Hold a short stick level with one end in the notch, and let the other end touch the tape." },
        { text: "Pinch the tape there, step back and read; do it three times." },
      ],
    },
  ],
  slips: [
    {
      code: "collarbone-for-notch",
      what: "The inner end of a collarbone was taken for the notch.",
      size: { direction: "+", fromMm: 5, toMm: 15, basis: "common practice, no source" },
      shows: "Readings scatter upwards.",
      detect: "The notch lies in the middle, with a collarbone on each side of it.",
      mend: "Slide the finger to the middle and down to the edge of the bone.",
    },
    {
      code: "deep-breath",
      what: "The chest was lifted by a held breath.",
      size: { direction: "+", fromMm: 5, toMm: 20, basis: "common practice, no source" },
      shows: "Readings swing with the breath.",
      detect: "Watch the mark through two breaths.",
      mend: "Read at the end of an ordinary breath out.",
    },
    { ...shoesOn, size: { direction: "+", fromMm: 10, toMm: 45, basis: "common practice, no source" } },
    { ...bookTilted, size: { direction: "both", fromMm: 5, toMm: 25, basis: "common practice, no source" } },
    { ...tapeLeans, size: { direction: "+", fromMm: 1, toMm: 8, basis: "common practice, no source" } },
    { ...slouched, size: { direction: "-", fromMm: 5, toMm: 40, basis: "common practice, no source" } },
  ],
};
