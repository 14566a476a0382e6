import { answerWith, type TryAnswer } from "../answer.ts";
import { readChart } from "../calls/read-chart.ts";
import type { Entries } from "../examples.ts";

export const answerReadChart: (entries: Entries) => TryAnswer = answerWith({
  id: "read-chart",
  run: readChart,
  argsOf: ({ text = "" }): Parameters<typeof readChart> => [text],
  readingOf: (sizes, issues) => {
    const wrong = issues.filter(({ severity }) => severity === "error").length;
    return { sentence: "read", facts: { sizes: sizes.length, wrong, odd: issues.length - wrong } };
  },
});
