import type { Task } from "./measure.ts";

/** A set of tasks that are timed beside each other. */
export interface Suite {
  /** What it is called on the command line; suites of one name run together. */
  readonly name: string;
  readonly title: string;
  readonly prepare: () => Promise<{
    /** Name of the task that counts as 1; with no tasks there is only the note. */
    readonly baseline?: string;
    readonly note: string;
    readonly tasks: readonly Task[];
  }>;
}
