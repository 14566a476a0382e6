import type { Task } from "./measure.ts";

/** A set of tasks that are timed beside each other. */
export interface Suite {
  readonly title: string;
  readonly prepare: () => Promise<{
    /** Name of the task that counts as 1. */
    readonly baseline: string;
    readonly note: string;
    readonly tasks: readonly Task[];
  }>;
}
