import type { Way } from "../dimension-entry.ts";

/** The ways to take the torso length, the best first. Common practice, no source. */
export const torsoLengthWays: readonly [Way, ...Way[]] = [
  {
    tool: "tape",
    who: "helper",
    suits: "The best way: two people, one tape, a few minutes. Choose it whenever somebody can help.",
    steps: [
      { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
      {
        text: "Find C7 with the head bent gently forward, test it by letting the head tip back, and mark it with the head level.",
        caution: "neck-movement",
      },
      {
        text: "Let the person lay both hands on the tops of the hip bones, fingers to the front and thumbs to the back, until the thumbs point at each other across the spine.",
      },
      {
        text: "Check from behind that the thumbs are level, and mark the spine on the line between their tips.",
      },
      { text: "Let the hands drop and the eyes go straight ahead." },
      {
        text: "Hold the zero of the tape on the upper mark and let the tape run down the middle of the spine.",
      },
      {
        text: "Lay the tape into the hollow of the lower back with a flat hand, so that it follows the curve and neither hangs over it nor pulls into the skin.",
      },
      {
        text: "Read at the lower mark, to the nearest half centimetre or quarter inch at the least, and write it down.",
      },
      {
        text: "Wipe off both marks, walk a few steps, and do everything again from the first mark: three readings in all. Only a mark found afresh shows how well it was found.",
      },
    ],
  },
  {
    tool: "cord-and-ruler",
    who: "helper",
    suits:
      "As good as the tape if there is none: any cord that does not stretch, and a ruler or a door frame to read it on.",
    steps: [
      { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
      { text: "Test the cord: pull it along a ruler; if it gives, take another." },
      { text: "Find and mark C7 and the line of the crests as with the tape.", caution: "neck-movement" },
      { text: "Knot the end of the cord and hold the knot on the upper mark." },
      { text: "Lay the cord down the middle of the spine into the hollow of the back, without pulling." },
      { text: "Pinch it at the lower mark and do not let go." },
      {
        text: "Lay it straight, no tighter than it lay on the back, along the ruler and read from knot to pinch.",
      },
      { text: "Do all of it three times, with new marks, and write each reading down." },
    ],
  },
  {
    tool: "short-rule",
    who: "helper",
    suits:
      "When there is only a short rule, such as a school ruler. Every joint adds a little error, so that more readings than three are worth having.",
    steps: [
      { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
      { text: "Find and mark C7 and the line of the crests.", caution: "neck-movement" },
      {
        text: "Stick a strip of paper tape or plaster along the spine from mark to mark, following the curve.",
      },
      { text: "Draw both ends on the strip, take it off and lay it flat on a table." },
      {
        text: "Lay the rule along it end to end, marking each joint with a sharp pencil line, and add the pieces. Start at the first line of the rule if that is not at its edge.",
      },
      { text: "Take three readings or more, each with a new strip, and write each one down." },
    ],
  },
  {
    tool: "tape",
    who: "self",
    suits:
      "Alone, with a tape. It scatters more than with a helper, and a wrong C7 stays wrong: take three readings or more.",
    steps: [
      {
        text: "Find C7 with the fingertips, head bent gently forward, then tip the head back: the bump that stays is C7. Put a sticker on it.",
        caution: "neck-movement",
      },
      {
        text: "Stick the end of the tape on the sticker with a strip of plaster, the zero at the bump, the scale outwards.",
      },
      {
        text: "Let the tape hang down the back, away from any wall; look straight ahead and let it lie along the spine.",
      },
      {
        text: "Lay both hands on the tops of the hip bones, thumbs to the back, and let the thumbs reach for each other, level.",
      },
      {
        text: "Catch the tape between the tips of both thumbs and press a nail into it; keep standing straight while you do.",
      },
      { text: "Keep the nail there, take the tape off and read it." },
      { text: "Do it again from the start, sticker and all, and write down every reading." },
    ],
  },
  {
    tool: "cord-and-ruler",
    who: "self",
    suits:
      "Alone, with a cord: it drapes more easily than a tape and cannot be peeked at. Take three readings or more.",
    steps: [
      { text: "Find C7 as with the tape and put a sticker on it.", caution: "neck-movement" },
      { text: "Knot the end of a cord that does not stretch and plaster the knot onto the sticker." },
      { text: "Let the cord hang along the spine; a coin taped to its end keeps it straight." },
      {
        text: "Lay the hands on the hip bones and pinch the cord between the thumbs, level, standing straight.",
      },
      { text: "Take the cord off without letting go and read it along a ruler from knot to pinch." },
      { text: "Do it again from the start and write down every reading." },
    ],
  },
];
