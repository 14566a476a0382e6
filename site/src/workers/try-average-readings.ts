import { answerAverageReadings } from "../try-it/answers/average-readings.ts";
import { serve } from "./serve.ts";

serve(answerAverageReadings);
