import type { SizeChart } from "@tapewise/charts";
import { type BlockAnswerer, createBlockAnswerer } from "../../batch/lane/answer-block.ts";
import { createBytePage } from "../../batch/lane/byte-page.ts";
import type { LineBlock } from "../../batch/lane/line-blocks.ts";
import type { PriorChoice } from "../../person/choose-prior.ts";

/** What becomes of a block of lines. */
export interface AnsweredBlock {
  /** They stay as they are until they are released. */
  readonly bytes: Uint8Array;
  /** Whether any of its lines got no choice. */
  readonly anyBad: boolean;
  /** Tells that nobody needs the bytes any longer. */
  readonly release: () => void;
}

/** Who answers blocks, several at a time. */
export interface Answerers {
  /** So many blocks may be under way: answered, or waiting for their turn to be written. */
  readonly most: number;
  /** Whether anybody has nothing to do. */
  readonly isAnyIdle: () => boolean;
  /** Takes a block, whose bytes may change afterwards. */
  readonly answer: (block: LineBlock) => Promise<AnsweredBlock>;
  readonly close: () => Promise<void>;
}

const PAGE_BYTES = 1 << 18;

/** Answers in this very thread: one block after the other, on one page that is used again. */
export function answerHere(charts: readonly SizeChart[], prior: PriorChoice): Answerers {
  const answer: BlockAnswerer = createBlockAnswerer(charts, prior);
  const page = createBytePage(PAGE_BYTES);
  return {
    most: 1,
    isAnyIdle: () => true,
    answer: async (block) => {
      page.length = 0;
      const anyBad = answer(block, page);
      return { bytes: page.bytes.subarray(0, page.length), anyBad, release: () => undefined };
    },
    close: async () => undefined,
  };
}
