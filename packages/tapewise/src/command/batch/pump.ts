import type { LineBlock } from "../../batch/lane/line-blocks.ts";
import type { Answerers } from "./answerers.ts";
import type { ByteWriter } from "./write-bytes.ts";

/** Carries blocks from the input to the output, in order and with a bounded number of them under way. */
export interface Pump {
  /** Takes a block; resolves to whether anybody still reads. */
  readonly take: (block: LineBlock) => Promise<boolean>;
  /** Resolves when everything is written: to whether any line got no choice. */
  readonly end: () => Promise<boolean>;
}

/** A pump through answerers to a writer. */
export function createPump(
  answerers: Answerers,
  write: ByteWriter,
  onWritten: (bytes: Uint8Array) => void,
): Pump {
  let underWay = 0;
  let anyBad = false;
  let reads = true;
  let fault: { readonly error: unknown } | undefined;
  let written = Promise.resolve();
  let wake: () => void = () => undefined;

  const put = async (answer: ReturnType<Answerers["answer"]>): Promise<void> => {
    try {
      const { bytes, anyBad: isBad } = await answer;
      anyBad ||= isBad;
      if (reads && fault === undefined && bytes.length > 0) {
        reads = await write(bytes);
        onWritten(bytes);
      }
    } catch (error) {
      fault ??= { error };
    }
    underWay -= 1;
    wake();
  };

  return {
    take: async (block) => {
      const answer = answerers.answer(block);
      // Whoever waits for it comes later; until then a failure is not one that nobody sees to.
      answer.catch(() => undefined);
      underWay += 1;
      written = written.then(() => put(answer));
      while (underWay >= answerers.most) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
      if (fault !== undefined) throw fault.error;
      return reads;
    },
    end: async () => {
      await written;
      if (fault !== undefined) throw fault.error;
      return anyBad;
    },
  };
}
