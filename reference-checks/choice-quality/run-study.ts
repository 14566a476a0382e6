import { Worker } from "node:worker_threads";
import type { StudiedPerson } from "./people.ts";
import { cellFilter, charts, readingSettings } from "./settings.ts";
import type { StudyOptions } from "./study.ts";
import type { CellTally } from "./tally.ts";

/** What a thread is given to work with. */
export interface Task {
  readonly people: readonly StudiedPerson[];
  /** The cells that are asked for, as on the command line. */
  readonly cells: string;
  readonly options: Omit<StudyOptions, "wants">;
}

/** Runs the study in several threads. The cells stand in their fixed order, however many threads there are. */
export async function runStudy(
  task: Task,
  threads: number,
  tell: (done: number, of: number) => void,
): Promise<readonly CellTally[]> {
  const wants = cellFilter(task.cells);
  const queue = readingSettings().flatMap(({ error, rounding, count }, place) =>
    charts.some((chart) =>
      wants({ error: error.name, rounding: rounding.name, readings: count, chart: chart.name }),
    )
      ? [place]
      : [],
  );
  const total = queue.length;
  const results = new Map<number, readonly CellTally[]>();
  const work = () =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(new URL("./worker.ts", import.meta.url), { workerData: task });
      let place: number | undefined;
      const next = () => {
        place = queue.shift();
        if (place === undefined) worker.terminate().then(() => resolve(), reject);
        else worker.postMessage(place);
      };
      worker.on("message", (cells: readonly CellTally[]) => {
        if (place !== undefined) results.set(place, cells);
        tell(results.size, total);
        next();
      });
      worker.on("error", reject);
      next();
    });
  await Promise.all(Array.from({ length: Math.max(1, Math.min(threads, total)) }, work));
  return [...results].toSorted(([a], [b]) => a - b).flatMap(([, cells]) => cells);
}
