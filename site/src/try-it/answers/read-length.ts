import { answerWith, type TryAnswer } from "../answer.ts";
import { readLength } from "../calls/read-length.ts";
import type { Entries } from "../examples.ts";

export const answerReadLength: (entries: Entries) => TryAnswer = answerWith({
  id: "read-length",
  run: readLength,
  argsOf: ({ text = "" }): Parameters<typeof readLength> => [text],
  readingOf: ({ mm, cm, in: inches }) => ({ sentence: "read", facts: { mm, cm, inches } }),
});
