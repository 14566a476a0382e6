import { answerChoose } from "../work/choose-answer.ts";
import { serve } from "./serve.ts";

serve(answerChoose);
