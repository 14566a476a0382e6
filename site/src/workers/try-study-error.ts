import { answerStudyError } from "../try-it/answers/study-error.ts";
import { serve } from "./serve.ts";

serve(answerStudyError);
