import { answerChart, type ChartQuestion } from "../work/chart-answer.ts";
import { serve } from "./serve.ts";

serve(async (question: ChartQuestion) =>
  answerChart(question, question.isLookedOver ? (await import("../work/look-over.ts")).lookOver : undefined),
);
