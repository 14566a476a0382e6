import { answerChooseForTable } from "../try-it/answers/choose-for-table.ts";
import { serve } from "./serve.ts";

serve(answerChooseForTable);
