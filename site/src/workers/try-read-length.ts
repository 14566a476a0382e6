import { answerReadLength } from "../try-it/answers/read-length.ts";
import { serve } from "./serve.ts";

serve(answerReadLength);
