import { spawnSync } from "node:child_process";
import { closeSync, openSync } from "node:fs";
import { fileURLToPath } from "node:url";

const bin = fileURLToPath(new URL("../../packages/tapewise/bin/tapewise.js", import.meta.url));

/** Whether GNU parallel is there; another program of that name has other options. */
export function hasGnuParallel(): boolean {
  return (
    spawnSync("parallel", ["--version"], { encoding: "utf8" }).stdout?.startsWith("GNU parallel") === true
  );
}

/** Answers people by one process; gives the seconds it took. */
export function answerAlone(chart: string, people: string, output: string): number {
  return timed([process.execPath, bin, "batch", "--prior", "none", "--chart", chart], people, output);
}

/** Answers people by as many processes as GNU parallel runs at a time, so many lines each, in order. */
export function answerInParallel(chart: string, people: string, output: string, lines: number): number {
  const command = [process.execPath, bin, "batch", "--prior", "none", "--chart", chart];
  return timed(["parallel", "--pipe", "--keep-order", `-N${lines}`, ...command.map(quoted)], people, output);
}

/** GNU parallel puts its words together to a line for the shell. */
function quoted(word: string): string {
  return `'${word.replaceAll("'", `'\\''`)}'`;
}

function timed([program = "", ...args]: readonly string[], input: string, output: string): number {
  const [from, to] = [openSync(input, "r"), openSync(output, "w")];
  const start = performance.now();
  try {
    const { status, stderr, error } = spawnSync(program, args, {
      stdio: [from, to, "pipe"],
      encoding: "utf8",
    });
    if (error !== undefined) throw error;
    if (status !== 0) throw new Error(`${program} has ended with ${status}: ${stderr}`);
  } finally {
    closeSync(from);
    closeSync(to);
  }
  return (performance.now() - start) / 1000;
}
