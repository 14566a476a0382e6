import { type ArrivesAnswer, type ArrivesQuestion, answerArrives } from "../work/arrives-answer.ts";
import type { ChartAnswer, ChartQuestion } from "../work/chart-answer.ts";
import { serve } from "./serve.ts";

// What reads charts is loaded with the first chart that is pasted, and shares the rest of the library.
serve(
  async (question: ArrivesQuestion | ChartQuestion): Promise<ArrivesAnswer | ChartAnswer> =>
    "text" in question
      ? (await import("../work/chart-answer.ts")).answerChart(question)
      : answerArrives(question),
);
