/// <reference types="node" />
import { fstatSync, statSync, writeSync } from "node:fs";
import { devNull } from "node:os";
import type { Io } from "./io.ts";

/** The standard input cannot be read, which is not the same as there being nothing in it. */
export class UnreadableInputError extends Error {
  override readonly name = "UnreadableInputError";
}

/**
 * The standard input, chunk by chunk.
 *
 * @throws {@link UnreadableInputError} while it is read.
 */
export async function* readInput({ stdin, inputFault }: Io): AsyncGenerator<Uint8Array, void, undefined> {
  if (inputFault !== undefined) throw new UnreadableInputError(inputFault);
  try {
    yield* stdin;
  } catch (error) {
    throw new UnreadableInputError(
      error instanceof Error && "code" in error ? String(error.code) : "unknown reason",
    );
  }
}

const STANDARD_INPUT = 0;

/**
 * Why the standard input of this process cannot be read, as far as it shows before anybody reads. Node
 * gives an empty stream for a directory, and puts the null device where there is no input at all; it
 * opens that to be written as well, by which it is told from one that a caller has connected to be read.
 */
export function inputFault(): string | undefined {
  try {
    const stats = fstatSync(STANDARD_INPUT);
    if (stats.isDirectory()) return "it is a directory";
    if (!stats.isCharacterDevice() || stats.rdev !== statSync(devNull).rdev) return undefined;
    writeSync(STANDARD_INPUT, new Uint8Array());
    return "it is closed";
  } catch {
    return undefined;
  }
}
