import type { DimensionGuide } from "../dimension-entry.ts";
import { shoulderPosture } from "./postures.ts";

/** Bideltoid breadth: the widest part of the shoulders, muscle to muscle. */
export const bideltoidBreadth: DimensionGuide = {
  id: "bideltoid-breadth",
  kind: "breadth",
  definition:
    "The largest level distance straight across the upper arms, over the muscles that cap the shoulders.",
  use: "It tells how wide the person is where the pack must pass and the arms must swing.",
  landmarks: ["deltoid-point"],
  standards: [
    { standard: "ISO 7250-1:2017", term: "shoulder (bideltoid) breadth", origin: "from memory" },
    {
      standard: "NATICK/TR-15/007",
      term: "bideltoid breadth",
      origin: "second-hand",
      differs: "The survey measured it seated, the forearms held forward.",
    },
  ],
  posture: shoulderPosture,
  needs: [
    "Two flat books, or a wall and one book.",
    "A tape or a ruler.",
    "A thin layer or none on the arms.",
  ],
  ways: [
    {
      tool: "tape",
      who: "helper",
      suits: "The best way.",
      steps: [
        { text: "Say what you are going to do, and ask before you touch.", caution: "ask-first" },
        { text: "Hold a flat book upright against the outside of each upper arm until both just touch." },
        { text: "Read the distance between the books, behind the back, level; do it three times." },
      ],
    },
    {
      tool: "tape",
      who: "self",
      suits: "Alone, with a wall and a tall box that slides: they stand in for the two books.",
      steps: [
        {
          text: "Stand a tall, flat box beside a wall, parallel to it and a little closer than your shoulders are wide.",
        },
        {
          text: "Step in sideways between wall and box, arms hanging loose, so that you push the box out just as far as it must go.",
        },
        {
          text: "Step out without moving it and read from wall to box, level, at the height of the arms; do it three times.",
        },
      ],
    },
  ],
  slips: [
    {
      code: "arms-pressed",
      what: "The books pressed into the muscles.",
      size: { direction: "-", fromMm: 5, toMm: 30, basis: "common practice, no source" },
      shows: "Readings are short and fall from one to the next.",
      detect: "Look for a dent in the skin.",
      mend: "Stop as soon as the books touch.",
    },
    {
      code: "arms-held-out",
      what: "The arms were held away from the body or tensed.",
      size: { direction: "+", fromMm: 10, toMm: 50, basis: "common practice, no source" },
      shows: "Readings are long and scatter.",
      detect: "Shake the arms and let them drop: does the number fall?",
      mend: "Let the arms hang loose.",
    },
    {
      code: "bone-for-muscle",
      what: "The bony corners were measured instead of the muscles.",
      size: {
        direction: "-",
        fromMm: 40,
        toMm: 150,
        basis: {
          source: "ansur-2",
          finding:
            "Bideltoid minus biacromial breadth, 5th to 95th percentile: 50 to 127 mm in 990 women and 58 to 135 mm in 2,040 men (even subject numbers); the range is widened to 40 to 150 mm by assumption.",
        },
      },
      shows: "The reading equals the shoulder breadth.",
      detect: "Where was it taken: on the corner or a hand's breadth below it?",
      mend: "Go down to the widest place.",
    },
    {
      code: "books-not-parallel",
      what: "The books did not stand upright, or the tape was not level.",
      size: { direction: "both", fromMm: 3, toMm: 20, basis: "common practice, no source" },
      shows: "Readings scatter.",
      detect: "Compare the distance in front and behind.",
      mend: "Set the books upright on a table or against the wall.",
    },
  ],
};
