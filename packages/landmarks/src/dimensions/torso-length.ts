import type { DimensionGuide } from "../dimension-entry.ts";
import { torsoLengthSlips } from "./torso-length-slips.ts";
import { torsoLengthWays } from "./torso-length-ways.ts";

/** Torso length: the dimension that a pack is sized by. No standard has it under this name. */
export const torsoLength: DimensionGuide = {
  id: "torso-length",
  kind: "length along the body",
  definition:
    "The length from C7, the bump at the base of the neck, down along the curve of the spine to the line that joins the tops of the two iliac crests.",
  use: "It chooses the size of the harness: with the right one the hip belt sits on the hip bones while the straps follow the shoulders.",
  landmarks: ["cervicale", "iliocristale", "crest-line-at-spine"],
  standards: [
    {
      standard: "ISO 8559-1:2017",
      term: "back neck point to waist",
      clause: "5.4.5",
      origin: "second-hand",
      differs: "It ends at the waist, half way between ribs and hip bone, and is therefore shorter.",
    },
    {
      standard: "NATICK/TR-15/007",
      term: "waist back length (omphalion)",
      origin: "second-hand",
      differs: "It ends at the height of the navel, and is therefore a little longer in most people.",
    },
  ],
  posture: [
    "Stand upright but at ease on a level floor, heels a little apart, the weight on both feet.",
    "Let the shoulders drop, the arms hang, and the lower back keep its own curve.",
    "Look straight ahead at something at eye level and keep the head there until the reading is done. The head bends only while C7 is being found.",
    "Breathe quietly.",
    "Wear bare skin or one thin, close shirt; hair tied up; trousers and belt pushed below the hip bones.",
  ],
  needs: [
    "A soft tape that has not stretched: check it against a steel rule.",
    "Two small stickers or a washable pen for the marks.",
    "Something to write on: each reading is written down before the next is taken.",
  ],
  ways: torsoLengthWays,
  slips: torsoLengthSlips,
};
