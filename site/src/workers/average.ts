import { answerAverage } from "../work/average-answer.ts";
import { serve } from "./serve.ts";

serve(answerAverage);
