/// <reference types="node" />
import { parentPort, workerData } from "node:worker_threads";
import { createBlockAnswerer } from "../../batch/lane/answer-block.ts";
import { createBytePage } from "../../batch/lane/byte-page.ts";
import type { LineBlock } from "../../batch/lane/line-blocks.ts";
import type { WorkerTask } from "./answerers.ts";

/** What a worker of a batch does: blocks of lines come in, answers go back in the same order. */
export function answerBlocks(): void {
  const { charts, prior } = workerData as WorkerTask;
  const answer = createBlockAnswerer(charts, prior);
  const page = createBytePage(1 << 18);
  parentPort?.on("message", (block: LineBlock) => {
    page.length = 0;
    const anyBad = answer(block, page);
    const bytes = page.bytes.slice(0, page.length);
    parentPort?.postMessage({ bytes, anyBad }, [bytes.buffer]);
  });
}
