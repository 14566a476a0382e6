import { answerChooseSize } from "../try-it/answers/choose-size.ts";
import { serve } from "./serve.ts";

serve(answerChooseSize);
