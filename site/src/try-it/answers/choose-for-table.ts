import { answerWith, type TryAnswer } from "../answer.ts";
import { chooseForTable } from "../calls/choose-for-table.ts";
import type { Entries } from "../examples.ts";

export const answerChooseForTable: (entries: Entries) => TryAnswer = answerWith({
  id: "choose-for-table",
  run: chooseForTable,
  argsOf: ({ people = "", chart = "" }): Parameters<typeof chooseForTable> => [people, chart],
  readingOf: (choices) => ({
    sentence: "chosen",
    facts: { people: choices.length, chosen: choices.filter(({ pick }) => pick !== null).length },
  }),
});
