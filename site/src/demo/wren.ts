import { answerChoose, type ChooseAnswer } from "../work/choose-answer.ts";
import { type ChooseState, emptyState } from "../work/choose-state.ts";
import { shelf } from "./shelf.ts";

/** The first member of the crew, as the page shows her before anybody enters anything. */
export const wren: ChooseState = {
  ...emptyState,
  readings: {
    "torso-length": ["40.3 cm", "39.8 cm", "40.6 cm"],
    "hip-belt-girth": ["88.5 cm", "89 cm", ""],
    "hip-girth": [],
  },
  measuredBy: "helper",
  tool: "tape",
  afresh: "yes",
  cut: "women",
  stature: "166 cm",
  isFirstPack: true,
  shelf: ["thimblewick-doily-45", "gingham-clockwork-metronome-40", "oboe-and-turnip-bassoon-65"],
};

/** Her answer, worked out while the site is built. */
export const wrensAnswer: ChooseAnswer = answerChoose({
  state: wren,
  charts: shelf.filter(({ id }) => wren.shelf.includes(id)).map(({ chart }) => chart),
});
