import { answerWith, type TryAnswer } from "../answer.ts";
import { averageReadings } from "../calls/average-readings.ts";
import { type Entries, listOf } from "../examples.ts";

export const answerAverageReadings: (entries: Entries) => TryAnswer = answerWith({
  id: "average-readings",
  run: averageReadings,
  argsOf: ({ texts, measuredBy }): Parameters<typeof averageReadings> => [
    listOf(texts),
    measuredBy === "self" ? "self" : "helper",
  ],
  readingOf: ({ mean, uncertainty, lasting, interval: [lower = "", upper = ""] }) => ({
    sentence: "estimated",
    facts: { mean, uncertainty, lasting, lower, upper },
  }),
});
