import { answerReadChart } from "../try-it/answers/read-chart.ts";
import { serve } from "./serve.ts";

serve(answerReadChart);
