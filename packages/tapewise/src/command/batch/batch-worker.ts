/// <reference types="node" />
import { parentPort, workerData } from "node:worker_threads";
import { createBlockAnswerer } from "../../batch/lane/answer-block.ts";
import type { BytePage } from "../../batch/lane/byte-page.ts";
import type { WorkerAnswer, WorkerOrder, WorkerTask } from "./worker-task.ts";

/** What a worker of a batch does: blocks of lines come in, answers go back in the same order. */
export function answerBlocks(): void {
  const { charts, prior } = workerData as WorkerTask;
  const answer = createBlockAnswerer(charts, prior);
  const page: BytePage = { bytes: new Uint8Array(0), length: 0 };
  parentPort?.on("message", ({ first, length, block, page: paper }: WorkerOrder) => {
    page.bytes = new Uint8Array(paper);
    page.length = 0;
    const anyBad = answer(
      length === undefined ? { first } : { first, bytes: new Uint8Array(block, 0, length) },
      page,
    );
    const done: WorkerAnswer = { block, page: page.bytes.buffer, length: page.length, anyBad };
    parentPort?.postMessage(done, [done.block, done.page]);
  });
}
