import type { ChartAnswer, ChartQuestion } from "../work/chart-answer.ts";
import { answerFits, type FitsAnswer, type FitsQuestion } from "../work/fits-answer.ts";
import { serve } from "./serve.ts";

// What reads charts is loaded with the first chart that is pasted, and shares the rest of the library.
serve(
  async (question: FitsQuestion | ChartQuestion): Promise<FitsAnswer | ChartAnswer> =>
    "text" in question
      ? (await import("../work/chart-answer.ts")).answerChart(question)
      : answerFits(question),
);
