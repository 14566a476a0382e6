/// <reference types="node" />
import { Worker } from "node:worker_threads";
import type { LineBlock } from "../../batch/lane/line-blocks.ts";
import type { Answerers } from "./answerers.ts";
import { giveMemoryBack } from "./give-memory-back.ts";
import type { WorkerAnswer, WorkerOrder, WorkerTask } from "./worker-task.ts";

/** Blocks under way for each worker: one that is answered, one that waits, and one that is written. */
const AHEAD = 3;
/** What the answers of a worker need in memory, in MB, and no more, so that the engine cleans up in time. */
const WORKER_LIMITS = { maxYoungGenerationSizeMb: 4, maxOldGenerationSizeMb: 64 };

/**
 * Memory for one block and its answers. It goes to a worker and comes back with the answers, so that nothing is copied
 * there and nothing is left over for the engine to clean up.
 */
interface Carrier {
  block: ArrayBuffer;
  page: ArrayBuffer;
}

const PAGE_BYTES = 1 << 20;
const STEP_BYTES = 1 << 16;

/** Answers in other threads. */
export function answerInWorkers(count: number, task: WorkerTask): Answerers {
  const isSource = import.meta.url.endsWith(".ts");
  const entry = new URL(isSource ? "./batch-worker.ts" : "./batch-worker.js", import.meta.url);
  // From the sources, a worker has to find the sources of the other packages too. What else this process was
  // started with, such as a script in place of a file, is not for a worker.
  const execArgv = isSource ? ["--conditions=@tapewise/source"] : [];
  const carriers: Carrier[] = [];
  giveMemoryBack();
  const workers = Array.from({ length: count }, () => openWorker(entry, task, execArgv));
  return {
    most: count * AHEAD,
    isAnyIdle: () => workers.some((worker) => worker.load() === 0),
    answer: async (block) => {
      const carrier = carriers.pop() ?? { block: new ArrayBuffer(0), page: new ArrayBuffer(PAGE_BYTES) };
      const worker = workers.reduce((a, b) => (b.load() < a.load() ? b : a));
      const { length, anyBad } = await worker.answer(block, carrier);
      const release = () => void carriers.push(carrier);
      return { bytes: new Uint8Array(carrier.page, 0, length), anyBad, release };
    },
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
  const waiting: { resolve: (answer: WorkerAnswer) => void; reject: (error: unknown) => void }[] = [];
  const fail = (error: unknown): void => {
    for (const one of waiting.splice(0)) one.reject(error);
  };
  worker.on("message", (answer: WorkerAnswer) => waiting.shift()?.resolve(answer));
  worker.on("error", fail);
  worker.on("exit", (code) => fail(new Error(`a worker has ended with ${code}`)));
  const send = (order: WorkerOrder) =>
    new Promise<WorkerAnswer>((resolve, reject) => {
      waiting.push({ resolve, reject });
      worker.postMessage(order, [order.block, order.page]);
    });
  return {
    load: () => waiting.length,
    answer: async ({ first, bytes }: LineBlock, carrier: Carrier) => {
      if (bytes !== undefined) {
        if (carrier.block.byteLength < bytes.length) {
          carrier.block = new ArrayBuffer(Math.ceil(bytes.length / STEP_BYTES) * STEP_BYTES);
        }
        new Uint8Array(carrier.block).set(bytes);
      }
      const answer = await send({ first, length: bytes?.length, ...carrier });
      carrier.block = answer.block;
      carrier.page = answer.page;
      return answer;
    },
    close: () => worker.terminate(),
  };
}
