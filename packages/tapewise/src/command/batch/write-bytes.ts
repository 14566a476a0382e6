/// <reference types="node" />
import type { FileHandle } from "node:fs/promises";
import type { Writable } from "node:stream";

/** Writes bytes, which may change once this resolves, when they are taken: to whether anybody still reads. */
export type ByteWriter = (bytes: Uint8Array) => Promise<boolean>;

/** Writes to a stream, waiting while its reader does not keep up. */
export function writeToStream(to: Writable): ByteWriter {
  // The streams of a process are done with what they have written; another one may hand it on as it is.
  const isOfProcess = "fd" in to;
  return (bytes) =>
    new Promise((resolve) => {
      if (to.destroyed || to.writableEnded) return resolve(false);
      const settle = (isThere: boolean): void => {
        to.off("close", onClose);
        resolve(isThere);
      };
      const onClose = (): void => settle(false);
      to.once("close", onClose);
      // What goes wrong is told by the stream itself.
      to.write(isOfProcess ? bytes : bytes.slice(), (error) =>
        settle(error === null || error === undefined ? !to.destroyed : false),
      );
    });
}

/** Writes to the end of a file. */
export function writeToFile(handle: FileHandle, length: number): ByteWriter {
  let at = length;
  return async (bytes) => {
    for (let done = 0; done < bytes.length; ) {
      const { bytesWritten } = await handle.write(bytes, done, bytes.length - done, at);
      done += bytesWritten;
      at += bytesWritten;
    }
    return true;
  };
}
