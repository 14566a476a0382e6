import { answerWhoIsServed } from "../try-it/answers/who-is-served.ts";
import { serve } from "./serve.ts";

serve(answerWhoIsServed);
