import type { ExitStatus } from "./exit-status.ts";
import type { Io } from "./io.ts";

/** What every verb is given: where to read and write, and how to say what became of it. */
export interface Context {
  readonly io: Io;
  readonly finish: (status: ExitStatus) => void;
}
