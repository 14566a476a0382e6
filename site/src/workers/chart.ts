import { answerChart } from "../work/chart-answer.ts";
import { serve } from "./serve.ts";

serve(answerChart);
