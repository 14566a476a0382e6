import type { SizeChart } from "@tapewise/charts";
import type { PriorChoice } from "../../person/choose-prior.ts";

/** What a worker is told at its start. */
export interface WorkerTask {
  readonly charts: readonly SizeChart[];
  readonly prior: PriorChoice;
}

/** One block of lines, and a page to answer on: both go over to the worker. */
export interface WorkerOrder {
  readonly first: number;
  /** How many bytes of the block are lines; `undefined` for the news of a line too long to keep. */
  readonly length: number | undefined;
  readonly block: ArrayBuffer;
  readonly page: ArrayBuffer;
}

/** The same memory back, or a larger page, with the answers on it. */
export interface WorkerAnswer {
  readonly block: ArrayBuffer;
  readonly page: ArrayBuffer;
  readonly length: number;
  readonly anyBad: boolean;
}
