import { answerWith, type TryAnswer } from "../answer.ts";
import { studyError } from "../calls/study-error.ts";
import type { Entries } from "../examples.ts";

export const answerStudyError: (entries: Entries) => TryAnswer = answerWith({
  id: "study-error",
  run: studyError,
  argsOf: ({ table = "" }): Parameters<typeof studyError> => [table],
  readingOf: ({ people, within, total }) => {
    if (within === null) return { sentence: "between", facts: { people, total: total?.mm ?? "" } };
    if (total === null) return { sentence: "within", facts: { people, within: within.mm } };
    return { sentence: "both", facts: { people, within: within.mm, total: total.mm } };
  },
});
