import { answerWith, type TryAnswer } from "../answer.ts";
import { chooseSize } from "../calls/choose-size.ts";
import { type Entries, listOf } from "../examples.ts";

export const answerChooseSize: (entries: Entries) => TryAnswer = answerWith({
  id: "choose-size",
  run: chooseSize,
  argsOf: ({ torso, hips, chart = "" }): Parameters<typeof chooseSize> => [
    listOf(torso),
    listOf(hips),
    chart,
  ],
  readingOf: ({ verdict, pick, chance }) => ({ sentence: verdict, facts: { pick, chance } }),
});
