import { type BytePage, createBytePage, makeRoom } from "../../batch/lane/byte-page.ts";
import type { LineBlock } from "../../batch/lane/line-blocks.ts";
import type { Answerers } from "./answerers.ts";
import type { ByteWriter } from "./write-bytes.ts";

/** Carries blocks from the input to the output, in order and with a bounded number of them under way. */
export interface Pump {
  /** Takes a block, whose bytes may change once this resolves: to whether anybody still reads. */
  readonly take: (block: LineBlock) => Promise<boolean>;
  /** Resolves when everything is written: to whether any line got no choice. */
  readonly end: () => Promise<boolean>;
}

/** So many bytes are worth a message to another thread; fewer go only where somebody is idle. */
const ENOUGH_BYTES = 1 << 18;

/**
 * A pump through answerers to a writer. Lines that come in while everybody is busy gather until they are enough; as soon
 * as somebody has nothing to do they are handed out, so that an input that comes slowly is answered at once.
 */
export function createPump(
  answerers: Answerers,
  write: ByteWriter,
  onWritten: (bytes: Uint8Array) => void,
): Pump {
  const gathered: BytePage = createBytePage(0);
  let firstGathered = 0;
  let underWay = 0;
  let anyBad = false;
  let reads = true;
  let fault: { readonly error: unknown } | undefined;
  let written = Promise.resolve();
  let wake: () => void = () => undefined;

  const put = async (answer: ReturnType<Answerers["answer"]>): Promise<void> => {
    try {
      const { bytes, anyBad: isBad, release } = await answer;
      anyBad ||= isBad;
      if (reads && fault === undefined && bytes.length > 0) {
        reads = await write(bytes);
        onWritten(bytes);
      }
      release();
    } catch (error) {
      fault ??= { error };
    }
    underWay -= 1;
    handOutToIdle();
    wake();
  };

  const handOut = (block: LineBlock): void => {
    const answer = answerers.answer(block);
    underWay += 1;
    written = written.then(() => put(answer));
    // Whoever waits for it comes later; until then a failure is not one that nobody sees to.
    answer.then(handOutToIdle, () => undefined);
  };
  const handOutGathered = (): void => {
    if (gathered.length === 0) return;
    const bytes = gathered.bytes.subarray(0, gathered.length);
    gathered.length = 0;
    handOut({ first: firstGathered, bytes });
  };
  const handOutToIdle = (): void => {
    if (underWay < answerers.most && answerers.isAnyIdle()) handOutGathered();
  };
  const gather = (first: number, bytes: Uint8Array): void => {
    if (gathered.length === 0) firstGathered = first;
    makeRoom(gathered, bytes.length);
    gathered.bytes.set(bytes, gathered.length);
    gathered.length += bytes.length;
  };
  /** Waits for room, or until what has gathered is handed out by itself. */
  const room = async (isWanted: () => boolean = () => true): Promise<void> => {
    while (underWay >= answerers.most && isWanted()) {
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    }
  };

  return {
    take: async (block) => {
      const { first, bytes } = block;
      if (bytes !== undefined && (gathered.length > 0 || !answerers.isAnyIdle())) {
        gather(first, bytes);
        handOutToIdle();
        const isEnough = () => gathered.length >= ENOUGH_BYTES;
        if (isEnough()) await room(isEnough);
        if (isEnough()) handOutGathered();
      } else {
        await room();
        handOutGathered();
        await room();
        handOut(block);
      }
      if (fault !== undefined) throw fault.error;
      return reads;
    },
    end: async () => {
      await room();
      handOutGathered();
      await written;
      if (fault !== undefined) throw fault.error;
      return anyBad;
    },
  };
}
