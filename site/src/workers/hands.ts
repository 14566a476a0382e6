import { answerHands } from "../work/hands-answer.ts";
import { serve } from "./serve.ts";

serve(answerHands);
