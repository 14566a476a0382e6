import type { Page } from "playwright-core";

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time in µs. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/**
 * How long the tasks of the page's main thread took, in ms of processor time, while something was done.
 * Processor time and not time on the clock, so that other work on the machine does not count; a processor that
 * is four times slower takes four times as long.
 */
export async function measureTasks(page: Page, work: () => Promise<void>): Promise<readonly number[]> {
  const browser = page.context().browser();
  if (browser === null) throw new Error("The page has no browser of its own to trace.");
  await browser.startTracing(page, { categories: ["toplevel", "__metadata"] });
  await work();
  const { traceEvents }: { traceEvents: readonly TraceEvent[] } = JSON.parse(
    (await browser.stopTracing()).toString("utf8"),
  );
  const mains = new Set(
    traceEvents
      .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  return traceEvents
    .filter(({ name, pid, tid }) => name.endsWith("RunTask") && mains.has(`${pid} ${tid}`))
    .flatMap(({ tdur }) => (tdur === undefined ? [] : [tdur / 1000]));
}
