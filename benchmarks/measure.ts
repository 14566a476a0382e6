import { Bench } from "tinybench";

/** One piece of work to be timed beside others. */
export interface Task {
  readonly name: string;
  /** Does the work once and returns something of it, so that none of it can be left out. */
  readonly work: () => unknown;
}

/** What one task took, beside the others of the same run. */
export interface Timing {
  readonly name: string;
  readonly medianMicroseconds: number;
  /** Relative margin of error of the mean, in per cent, as the bench states it. */
  readonly marginPercent: number;
}

/** What the work leaves behind is summed up here, where the engine cannot see that nobody reads it. */
const sink: { kept: unknown } = { kept: undefined };

/** Times tasks side by side in one run. */
export async function measure(tasks: readonly Task[], milliseconds = 1500): Promise<readonly Timing[]> {
  // Work that takes a second is not done the bench's own 64 times.
  const bench = new Bench({ time: milliseconds, warmupTime: 500, iterations: 16, warmupIterations: 4 });
  for (const { name, work } of tasks) {
    bench.add(name, () => {
      const made = work();
      sink.kept = made;
      // Work that goes on is waited for.
      return made instanceof Promise ? made : undefined;
    });
  }
  await bench.run();
  return bench.tasks.map((task) => {
    const { result } = task;
    if (!("latency" in result)) throw new Error(`${task.name} did not finish`);
    return {
      name: task.name,
      medianMicroseconds: result.latency.p50 * 1000,
      marginPercent: result.latency.rme,
    };
  });
}
