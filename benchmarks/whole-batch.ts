// The whole command on many lines, beside a program that does bare JSON: each in a process of its own.
import { spawn } from "node:child_process";
import { openSync } from "node:fs";
import { devNull } from "node:os";
import { fileURLToPath } from "node:url";

/** What a run took: seconds on the clock and of the processors, and MiB at most. */
export interface Run {
  readonly clock: number;
  readonly processors: number;
  readonly memory: number;
}

const TIMED = `
  const start = performance.now();
  process.argv.splice(1, 1);
  process.on("exit", () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    console.error(JSON.stringify([(performance.now() - start) / 1e3, (userCPUTime + systemCPUTime) / 1e6, maxRSS / 1024]));
  });
  await import(${JSON.stringify(new URL("../packages/tapewise/dist/command/main.js", import.meta.url).href)})
    .then(({ main }) => main(process.argv.slice(1)));`;

/** Runs the batch of the command, start included, on some files one after the other. */
export function runBatch(files: readonly string[], chart: string, ...argv: readonly string[]): Promise<Run> {
  return run(["--input-type=module", "-e", TIMED, "--", "-", "batch", "--chart", chart, ...argv], files);
}

/** Runs the program that does bare JSON, with objects from a file of answers. */
export function runBare(files: readonly string[], answers: string): Promise<Run> {
  return run([fileURLToPath(new URL("bare-json.ts", import.meta.url)), answers], files);
}

/** One file is read as it is, several come through a pipe; what is written goes nowhere. */
async function run(argv: readonly string[], files: readonly string[]): Promise<Run> {
  const [first = devNull, ...others] = files;
  const isPiped = others.length > 0;
  const source = isPiped ? spawn("cat", files, { stdio: ["ignore", "pipe", "inherit"] }) : undefined;
  const input = source?.stdout ?? openSync(first, "r");
  const child = spawn(process.execPath, argv, { stdio: [input, "ignore", "pipe"] });
  source?.stdout?.destroy();
  let told = "";
  child.stderr?.setEncoding("utf8").on("data", (text: string) => {
    told += text;
  });
  const status = await new Promise((resolve) => child.on("close", resolve));
  if (status !== 0) throw new Error(`a run has ended with ${status}: ${told}`);
  const last: unknown = JSON.parse(told.trim().split("\n").at(-1) ?? "");
  const [clock = Number.NaN, processors = Number.NaN, memory = Number.NaN] = Array.isArray(last) ? last : [];
  return { clock, processors, memory };
}

/** The middle of several runs, each figure for itself. */
export function middleRun(runs: readonly Run[]): Run {
  const middle = (pick: (one: Run) => number): number =>
    runs.map(pick).toSorted((a, b) => a - b)[runs.length >> 1] ?? Number.NaN;
  return {
    clock: middle(({ clock }) => clock),
    processors: middle(({ processors }) => processors),
    memory: Math.max(...runs.map(({ memory }) => memory)),
  };
}
