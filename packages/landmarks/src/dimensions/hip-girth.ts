import type { DimensionGuide } from "../dimension-entry.ts";
import { girthPosture } from "./postures.ts";
import {
  clothesUnderTape,
  tapeSlants,
  tapeTooLoose,
  tapeTooTight,
  tapeTwisted,
} from "./shared-girth-slips.ts";

/** Hip girth: the widest girth of the seat, the "hip" of clothing standards. */
export const hipGirth: DimensionGuide = {
  id: "hip-girth",
  kind: "girth",
  definition: "The level girth of the hips where the seat stands out furthest to the back.",
  use: "Some charts size the hip belt by it. It is not where the belt sits, so it stands in for the hip-belt girth only where a chart says so.",
  landmarks: ["buttock-point"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "hip girth", clause: "5.3.13", origin: "second-hand" },
    { standard: "NATICK/TR-15/007", term: "buttock circumference", origin: "second-hand" },
  ],
  posture: girthPosture,
  needs: [
    "A soft tape at least a metre and a half long.",
    "A long mirror, if you are alone.",
    "Underwear or one thin, close layer; empty pockets.",
  ],
  ways: [
    {
      tool: "tape",
      who: "self",
      suits: "Fine alone, with a mirror at your side to see that the back of the tape is level.",
      steps: [
        {
          text: "Stand sideways to the mirror, heels together, and find the height where the seat stands out furthest.",
        },
        { text: "Pass the tape round at that height and close it at the side, not in front." },
        { text: "Slide it a little up and down: keep the place where it is largest." },
        { text: "Level it, let it touch without denting, and read." },
        { text: "Take it off and read twice more." },
      ],
    },
    {
      tool: "tape",
      who: "helper",
      suits: "When the back of the tape will not stay level.",
      steps: [
        { text: "Say what you are going to do; let the person pass the tape round.", caution: "ask-first" },
        {
          text: "Kneel at the side, level the tape at the height where the seat stands out furthest, and read.",
        },
        { text: "Read twice more, each time with the tape taken off." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "self",
      suits: "Without a tape.",
      steps: [
        { text: "Lay a cord that does not stretch round the same height and cross its ends at the side." },
        { text: "Pinch the crossing, take the cord off, and read from nail to nail along a straight edge." },
        { text: "Do it three times and write each reading down." },
      ],
    },
  ],
  slips: [
    {
      code: "crest-for-hips",
      what: "The tape was laid round the tops of the hip bones.",
      size: { direction: "-", fromMm: 30, toMm: 200, basis: "common practice, no source" },
      shows: "The reading equals the hip-belt girth.",
      detect: "Bone under the tape at the side means that it is too high.",
      mend: "Move down to where the seat stands out furthest.",
    },
    {
      code: "feet-apart",
      what: "The feet stood apart.",
      size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" },
      shows: "Readings are long and fall when the heels come together.",
      detect: "Look at the feet.",
      mend: "Heels together, or as near as the thighs allow.",
    },
    {
      code: "read-alone",
      what: "Alone, the tape was set where it could be seen rather than where it should be.",
      size: {
        direction: "-",
        fromMm: 5,
        toMm: 20,
        basis: {
          source: "self-girths-2013",
          finding:
            "125 people read their own hips 10 mm too small on average, compared with a helper. The range around it is an assumption.",
        },
      },
      shows: "Readings taken alone are a little short.",
      detect: "Compare one reading with a helper's.",
      mend: "Use a mirror at the side, or ask for help once.",
    },
    { ...tapeSlants, size: { direction: "+", fromMm: 3, toMm: 25, basis: "common practice, no source" } },
    { ...tapeTooTight, size: { direction: "-", fromMm: 10, toMm: 50, basis: "common practice, no source" } },
    { ...tapeTooLoose, size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" } },
    {
      ...clothesUnderTape,
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
    },
    { ...tapeTwisted, size: { direction: "+", fromMm: 3, toMm: 20, basis: "common practice, no source" } },
  ],
};
