import type { Page } from "playwright-core";
import { expect } from "vitest";

/** How much slower the processor is that is thought of. */
const SLOWER = 4;

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
  let trace: Buffer | undefined;
  try {
    await work();
  } finally {
    trace = await browser.stopTracing();
  }
  const { traceEvents }: { traceEvents: readonly TraceEvent[] } = JSON.parse(trace.toString("utf8"));
  const mains = new Set(
    traceEvents
      .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  return traceEvents
    .filter(({ name, pid, tid }) => name.endsWith("RunTask") && mains.has(`${pid} ${tid}`))
    .flatMap(({ tdur }) => (tdur === undefined ? [] : [tdur / 1000]));
}

/**
 * The longest task, in ms, on a processor four times slower: the median of three runs, of which the third is spared
 * where two agree about the bound. One run alone may be disturbed by whatever else the machine is doing.
 */
export async function medianLongest(
  boundMs: number,
  open: () => Promise<Page>,
  work: (page: Page) => Promise<void>,
): Promise<number> {
  const runs: number[] = [];
  for (;;) {
    const page = await open();
    const tasks = await measureTasks(page, () => work(page));
    if (tasks.length < 6) throw new Error(`Only ${tasks.length} tasks were traced.`);
    await page.close();
    runs.push(Math.max(...tasks) * SLOWER);
    const within = runs.filter((ms) => ms <= boundMs).length;
    const [low = 0, middle = low] = runs.toSorted((a, b) => a - b);
    if (runs.length === 3) return middle;
    if (runs.length === 2 && within !== 1) return within === 2 ? middle : low;
  }
}

/** Waits until the page has answered what was entered, and drawn what it puts off until there is time. */
export async function settled(page: Page): Promise<void> {
  // Once for the question to be asked, and once for the answer to be drawn.
  await timersDone(page);
  await expect.poll(() => page.locator("main [aria-busy=true]").count(), { timeout: 60_000 }).toBe(0);
  await timersDone(page);
}

/** Timers of the page that are shorter than this one have fired when it does. */
async function timersDone(page: Page): Promise<void> {
  await page.evaluate("new Promise((done) => setTimeout(() => requestIdleCallback(done), 250))");
}
