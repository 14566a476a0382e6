// Counts how often the intervals of reliability studies hold what they should.
//   npm run check:intervals [-- --runs N] [--only TEXT] [--seed N] [--threads N] [--write]
import { readdirSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";

/** What every file beside this one exports as `cases`. */
interface CoverageCase {
  readonly name: string;
  readonly nominal: number;
  run(runs: number, seed: number): { readonly covered: number; readonly runs: number };
}

interface Task {
  readonly file: string;
  readonly position: number;
  readonly name: string;
  readonly nominal: number;
}

interface Result extends Task {
  readonly covered: number;
  readonly runs: number;
}

const LEAST = 0.01;

if (isMainThread) await main();
else await work();

async function casesOf(file: string): Promise<readonly CoverageCase[]> {
  const module: { readonly cases?: readonly CoverageCase[] } = await import(
    new URL(file, import.meta.url).href
  );
  if (module.cases === undefined || module.cases.length === 0) throw new Error(`${file} exports no cases`);
  return module.cases;
}

async function work(): Promise<void> {
  const { runs, seed } = workerData;
  parentPort?.on("message", async ({ file, position }: Task) => {
    const found = (await casesOf(file))[position];
    if (found === undefined) throw new Error(`${file} has no case ${position}`);
    parentPort?.postMessage(found.run(runs, seed));
  });
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      runs: { type: "string", default: "10000" },
      seed: { type: "string", default: "1" },
      only: { type: "string", default: "" },
      threads: { type: "string", default: String(availableParallelism()) },
      write: { type: "boolean", default: false },
    },
  });
  const [runs, seed, threads] = [values.runs, values.seed, values.threads].map(Number);
  if (
    !(Number.isSafeInteger(runs) && Number(runs) > 0 && Number.isSafeInteger(seed) && Number(threads) >= 1)
  ) {
    throw new Error("--runs and --threads need whole numbers from 1 on, --seed a whole number");
  }
  const files = readdirSync(new URL(".", import.meta.url)).filter(
    (name) => /\.ts$/.test(name) && name !== "run.ts",
  );
  const tasks: Task[] = [];
  for (const file of files.sort()) {
    for (const [position, { name, nominal }] of (await casesOf(file)).entries()) {
      if (name.includes(values.only)) tasks.push({ file, position, name, nominal });
    }
  }
  const results = await runAll(tasks, { runs: Number(runs), seed: Number(seed) }, Number(threads));
  const report = reportOf(results, Number(runs), Number(seed));
  process.stdout.write(report);
  if (values.write) writeFileSync(new URL("RESULTS.md", import.meta.url), report);
}

async function runAll(
  tasks: readonly Task[],
  settings: { readonly runs: number; readonly seed: number },
  threads: number,
): Promise<readonly Result[]> {
  const results: (Result | undefined)[] = tasks.map(() => undefined);
  let next = 0;
  const oneThread = (): Promise<void> =>
    new Promise((resolve, reject) => {
      const worker = new Worker(new URL(import.meta.url), { workerData: settings });
      let mine = -1;
      const give = (): void => {
        const task = tasks[next];
        if (task === undefined) {
          worker.terminate().then(() => resolve(), reject);
          return;
        }
        mine = next++;
        worker.postMessage(task);
      };
      worker.on("message", (counted: { readonly covered: number; readonly runs: number }) => {
        const task = tasks[mine];
        if (task !== undefined) results[mine] = { ...task, ...counted };
        process.stderr.write(`${next}/${tasks.length} ${task?.name}\n`);
        give();
      });
      worker.on("error", reject);
      give();
    });
  await Promise.all(Array.from({ length: Math.min(threads, tasks.length) }, oneThread));
  return results.flatMap((result) => (result === undefined ? [] : [result]));
}

/** A table for each file; a case outside ±1 % of its nominal probability is marked. */
function reportOf(results: readonly Result[], runs: number, seed: number): string {
  const lines = [
    "# Coverage of intervals",
    "",
    `Simulated studies in which the truth is known: ${runs} of each kind, seed ${seed}. “Covered” is the share of`,
    "intervals that held it, with twice its standard error. A star marks a share more than one per cent from nominal.",
    `Made by \`npm run check:intervals -- --runs ${runs} --seed ${seed} --write\`.`,
  ];
  for (const file of new Set(results.map((result) => result.file))) {
    lines.push(
      "",
      `## ${file.replace(/\.ts$/, "")}`,
      "",
      "| case | nominal | covered | |",
      "| --- | --- | --- | --- |",
    );
    for (const { name, nominal, covered, runs: counted } of results.filter(
      (result) => result.file === file,
    )) {
      const share = covered / counted;
      const error = 2 * Math.sqrt((share * (1 - share)) / counted);
      const star = Math.abs(share - nominal) > LEAST ? "*" : "";
      const cells = [`${(100 * share).toFixed(1)} ± ${(100 * error).toFixed(1)} %`, star];
      lines.push(`| ${name} | ${100 * nominal} % | ${cells.join(" | ")} |`);
    }
  }
  return `${lines.join("\n")}\n`;
}
