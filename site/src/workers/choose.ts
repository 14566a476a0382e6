import type { ChartAnswer, ChartQuestion } from "../work/chart-answer.ts";
import { answerChoose, type ChooseAnswer, type ChooseQuestion } from "../work/choose-answer.ts";
import { serve } from "./serve.ts";

// What reads charts is loaded with the first chart that is pasted, and shares the rest of the library.
serve(
  async (question: ChooseQuestion | ChartQuestion): Promise<ChooseAnswer | ChartAnswer> =>
    "text" in question
      ? (await import("../work/chart-answer.ts")).answerChart(question)
      : answerChoose(question),
);
