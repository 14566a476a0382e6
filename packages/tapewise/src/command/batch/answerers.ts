/// <reference types="node" />
import { Worker } from "node:worker_threads";
import type { SizeChart } from "@tapewise/charts";
import { type BlockAnswerer, createBlockAnswerer } from "../../batch/lane/answer-block.ts";
import { createBytePage } from "../../batch/lane/byte-page.ts";
import type { LineBlock } from "../../batch/lane/line-blocks.ts";
import type { PriorChoice } from "../../person/choose-prior.ts";

/** What becomes of a block of lines. */
export interface AnsweredBlock {
  readonly bytes: Uint8Array;
  /** Whether any of its lines got no choice. */
  readonly anyBad: boolean;
}

/** Who answers blocks, several at a time. */
export interface Answerers {
  /** So many blocks may be under way before the first of them has to be waited for. */
  readonly most: number;
  readonly answer: (block: LineBlock) => Promise<AnsweredBlock>;
  readonly close: () => Promise<void>;
}

/** What a worker is told at its start. */
export interface WorkerTask {
  readonly charts: readonly SizeChart[];
  readonly prior: PriorChoice;
}

const PAGE_BYTES = 1 << 18;

/** Answers in this very thread: one block after the other, on one page that is used again. */
export function answerHere(charts: readonly SizeChart[], prior: PriorChoice): Answerers {
  const answer: BlockAnswerer = createBlockAnswerer(charts, prior);
  const page = createBytePage(PAGE_BYTES);
  return {
    most: 1,
    answer: async (block) => {
      page.length = 0;
      const anyBad = answer(block, page);
      // A copy, for whoever writes it may keep it longer than the page stays as it is.
      return { bytes: page.bytes.slice(0, page.length), anyBad };
    },
    close: async () => undefined,
  };
}

/** Blocks under way for each worker: one that is answered and one that waits, so that none is idle. */
const AHEAD = 2;
/** What the answers of a worker need in memory, in MB, and no more, so that the engine cleans up in time. */
const WORKER_LIMITS = { maxYoungGenerationSizeMb: 2, maxOldGenerationSizeMb: 64 };

/** Answers in other threads. */
export function answerInWorkers(count: number, task: WorkerTask): Answerers {
  const isSource = import.meta.url.endsWith(".ts");
  const entry = new URL(isSource ? "./batch-worker.ts" : "./batch-worker.js", import.meta.url);
  // From the sources, a worker has to find the sources of the other packages too. What else this process was
  // started with, such as a script in place of a file, is not for a worker.
  const execArgv = isSource ? ["--conditions=@tapewise/source"] : [];
  const workers = Array.from({ length: count }, () => openWorker(entry, task, execArgv));
  return {
    most: count * AHEAD,
    answer: (block) => workers.reduce((a, b) => (b.load() < a.load() ? b : a)).answer(block),
    close: async () => {
      await Promise.all(workers.map((worker) => worker.close()));
    },
  };
}

function openWorker(entry: URL, task: WorkerTask, execArgv: string[]) {
  // A module that does nothing until it is told to, as all of them.
  const start = `import(${JSON.stringify(entry.href)}).then(({ answerBlocks }) => answerBlocks());`;
  const worker = new Worker(start, {
    eval: true,
    workerData: task,
    resourceLimits: WORKER_LIMITS,
    execArgv,
  });
  const waiting: { resolve: (answer: AnsweredBlock) => void; reject: (error: unknown) => void }[] = [];
  const fail = (error: unknown): void => {
    for (const one of waiting.splice(0)) one.reject(error);
  };
  worker.on("message", (answer: AnsweredBlock) => waiting.shift()?.resolve(answer));
  worker.on("error", fail);
  worker.on("exit", (code) => fail(new Error(`a worker has ended with ${code}`)));
  return {
    load: () => waiting.length,
    answer: (block: LineBlock) =>
      new Promise<AnsweredBlock>((resolve, reject) => {
        waiting.push({ resolve, reject });
        // A copy of its own, for the chunk may be used again.
        const bytes = block.bytes === undefined ? undefined : new Uint8Array(block.bytes);
        const copy: LineBlock = bytes === undefined ? block : { ...block, bytes };
        worker.postMessage(copy, bytes === undefined ? [] : [bytes.buffer]);
      }),
    close: () => worker.terminate(),
  };
}
