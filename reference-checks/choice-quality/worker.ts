// One thread of the study: it is told the place of a way of reading and sends back its cells.
import { parentPort, workerData } from "node:worker_threads";
import type { Task } from "./run-study.ts";
import { cellFilter, readingSettings } from "./settings.ts";
import { runSetting } from "./study.ts";

const task: Task = workerData;
const settings = readingSettings();
const options = { ...task.options, wants: cellFilter(task.cells) };
parentPort?.on("message", (place: number) => {
  const setting = settings[place];
  if (setting === undefined) throw new Error(`there is no way of reading number ${place}`);
  parentPort?.postMessage(runSetting(task.people, setting, options));
});
