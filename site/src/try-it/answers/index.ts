import type { TryAnswer } from "../answer.ts";
import type { Entries, ExampleId } from "../examples.ts";
import { answerAverageReadings } from "./average-readings.ts";
import { answerChooseForTable } from "./choose-for-table.ts";
import { answerChooseSize } from "./choose-size.ts";
import { answerReadChart } from "./read-chart.ts";
import { answerReadLength } from "./read-length.ts";
import { answerStudyError } from "./study-error.ts";
import { answerWhoIsServed } from "./who-is-served.ts";

/** What answers each example, for building the site and for tests; a page loads the worker of its own only. */
export const answers: Readonly<Record<ExampleId, (entries: Entries) => TryAnswer>> = {
  "choose-size": answerChooseSize,
  "read-chart": answerReadChart,
  "choose-for-table": answerChooseForTable,
  "average-readings": answerAverageReadings,
  "who-is-served": answerWhoIsServed,
  "study-error": answerStudyError,
  "read-length": answerReadLength,
};
