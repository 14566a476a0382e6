import { Session } from "node:inspector/promises";

/**
 * How often each named function runs while some work is done once, as the engine counts it.
 *
 * @param inFile - only functions of files whose URL contains this
 */
export async function countCalls(work: () => void, inFile: string): Promise<ReadonlyMap<string, number>> {
  const session = new Session();
  session.connect();
  try {
    await session.post("Profiler.enable");
    await session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: false });
    await session.post("Profiler.takePreciseCoverage");
    work();
    const { result } = await session.post("Profiler.takePreciseCoverage");
    const counts = new Map<string, number>();
    for (const script of result) {
      if (!script.url.includes(inFile)) continue;
      for (const { functionName, ranges } of script.functions) {
        const count = ranges[0]?.count ?? 0;
        if (functionName !== "" && count > 0) {
          counts.set(functionName, (counts.get(functionName) ?? 0) + count);
        }
      }
    }
    return counts;
  } finally {
    session.disconnect();
  }
}
