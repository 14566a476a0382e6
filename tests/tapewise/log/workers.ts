import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll } from "vitest";

/** A worker that runs, and how many of its rows it has said to be kept so far. */
export interface Worker {
  readonly process: ChildProcess;
  readonly kept: () => number;
  /** Resolves when it has ended and everything that it said was heard; to what it said went wrong. */
  readonly ended: Promise<string>;
}

/** Makes workers out of `log-worker.ts`: bundled once, because hundreds are started and most are killed young. */
export function logWorkers(): (...args: readonly string[]) => Worker {
  const folder = mkdtempSync(join(tmpdir(), "tapewise-worker-"));
  const program = join(folder, "worker.mjs");
  beforeAll(async () => {
    await build({
      entryPoints: [fileURLToPath(new URL("log-worker.ts", import.meta.url))],
      outfile: program,
      bundle: true,
      platform: "node",
      format: "esm",
      conditions: ["@tapewise/source"],
      logLevel: "error",
    });
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return (...args) => {
    const child = spawn(process.execPath, [program, ...args], { stdio: ["ignore", "pipe", "pipe"] });
    let [said, complaints] = ["", ""];
    child.stdout.on("data", (chunk: Buffer) => {
      said += chunk.toString();
    });
    child.stderr.on("data", (chunk: Buffer) => {
      complaints += chunk.toString();
    });
    return {
      process: child,
      kept: () => said.split("\n").length - 1,
      ended: once(child, "close").then(() => complaints),
    };
  };
}
