import type { DimensionGuide } from "../dimension-entry.ts";
import { girthPosture } from "./postures.ts";
import {
  clothesUnderTape,
  tapeSlants,
  tapeTooLoose,
  tapeTooTight,
  tapeTwisted,
} from "./shared-girth-slips.ts";

/** Chest or bust girth: around the fullest part of the chest. */
export const chestGirth: DimensionGuide = {
  id: "chest-girth",
  kind: "girth",
  definition:
    "The level girth of the chest at the bust points, under the arms and over the shoulder blades; with breasts, over the fullest part.",
  use: "It tells how much room the straps and the chest strap need: a large chest or strong back muscles speak for the longer of two harnesses.",
  landmarks: ["thelion", "scapula-inferior-angle"],
  standards: [
    { standard: "ISO 8559-1:2017", term: "bust girth", clause: "5.3.4", origin: "second-hand" },
    {
      standard: "ISO 7250-1:2017",
      term: "chest circumference",
      origin: "from memory",
      differs: "Editions differ in the level; check the one you use.",
    },
    { standard: "NATICK/TR-15/007", term: "chest circumference", origin: "second-hand" },
  ],
  posture: girthPosture,
  needs: [
    "A soft tape at least a metre and a half long.",
    "The brassiere that will be worn with the pack, or none if none will be.",
    "Bare skin or one thin layer over it.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The better way: the tape slides down at the back unseen.",
      steps: [
        {
          text: "Say what you are going to do; let the person hold the tape in front.",
          caution: "ask-first",
        },
        {
          text: "Pass the tape round under the lifted arms, over the shoulder blades, level with the bust points.",
        },
        { text: "Let the arms hang again and the breath go." },
        { text: "Level the tape, let it touch without denting, and read between two breaths." },
        { text: "Read twice more, each time with the tape taken off." },
      ],
    },
    {
      tool: "tape",
      who: "self",
      suits: "Alone, with a mirror behind or at the side.",
      steps: [
        { text: "Lay the tape behind you over the shoulder blades and bring it forward under the arms." },
        { text: "Turn to the mirror and level it with the fullest part in front." },
        { text: "Drop the shoulders, breathe out, and read where the tape meets." },
        { text: "Take it off and read twice more." },
      ],
    },
    {
      tool: "cord-and-ruler",
      who: "helper",
      suits: "Without a tape.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        {
          text: "Lay a cord that does not stretch round as the tape would go and cross its ends at the side.",
        },
        { text: "Pinch the crossing, take the cord off and read along a straight edge; do it three times." },
      ],
    },
  ],
  slips: [
    {
      code: "slid-down-at-back",
      what: "The tape slid down from the shoulder blades at the back.",
      size: { direction: "-", fromMm: 10, toMm: 50, basis: "common practice, no source" },
      shows: "Readings are short; seen from the side the tape falls towards the back.",
      detect: "Look at the back, or feel for the tape with a thumb.",
      mend: "Hold the tape on the shoulder blades until the arms are down.",
    },
    {
      code: "deep-breath",
      what: "The chest was filled with air, or the breath held.",
      size: { direction: "+", fromMm: 10, toMm: 60, basis: "common practice, no source" },
      shows: "Readings swing up and down with the breath.",
      detect: "Watch the tape through two breaths.",
      mend: "Read at the end of an ordinary breath out.",
    },
    {
      code: "underbust-for-bust",
      what: "The girth below the breasts was taken.",
      size: { direction: "-", fromMm: 30, toMm: 250, basis: "common practice, no source" },
      shows: "The reading equals the underbust girth.",
      detect: "Look from the side where the tape lies.",
      mend: "Lift the tape to the fullest part.",
    },
    {
      code: "arms-lifted",
      what: "The arms stayed lifted, which spreads the muscles of the back.",
      size: { direction: "+", fromMm: 5, toMm: 40, basis: "common practice, no source" },
      shows: "The reading falls when the arms come down.",
      detect: "Look at the arms.",
      mend: "Lower the arms before reading.",
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
