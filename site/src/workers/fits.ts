import { answerFits } from "../work/fits-answer.ts";
import { serve } from "./serve.ts";

serve(answerFits);
