/** Processor time of a piece of work, in milliseconds: other people's jobs stretch the clock, and this far less. */
function processorMs(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** One size of a task. */
export interface Sized {
  readonly size: number;
  /** Does the work of this size as often as it takes to be timed, and gives that number back. */
  readonly repeat: () => number;
}

/** What the work of one size takes, in milliseconds of a processor: the middle of all rounds. */
export interface SizedTime {
  readonly size: number;
  readonly ms: number;
}

/** Times all sizes in turn, round by round, so that a slow spell of the machine meets all of them. */
export function timeSizes(sizes: readonly Sized[], rounds: number): readonly SizedTime[] {
  const times = sizes.map((): number[] => []);
  // The first round is for the engine, which compiles what runs often.
  for (let round = 0; round <= rounds; round += 1) {
    for (const [place, { repeat }] of sizes.entries()) {
      let count = 1;
      const ms = processorMs(() => {
        count = repeat();
      });
      if (round > 0) times[place]?.push(ms / count);
    }
  }
  return sizes.map(({ size }, place) => ({ size, ms: middleOf(times[place] ?? []) }));
}

function middleOf(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

/**
 * The power of the size that the time grows with: the slope of a straight line through the logarithms by least squares, and
 * its standard error.
 */
export function growthPower(times: readonly SizedTime[]): string {
  const points = times.map(({ size, ms }) => [Math.log(size), Math.log(ms)] as const);
  const count = points.length;
  const [meanX, meanY] = [0, 1].map((k) => points.reduce((sum, point) => sum + (point[k] ?? 0), 0) / count);
  const [x, y] = [meanX ?? 0, meanY ?? 0];
  const squares = points.reduce((sum, [a]) => sum + (a - x) ** 2, 0);
  const slope = points.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0) / squares;
  const rest = points.reduce((sum, [a, b]) => sum + (b - y - slope * (a - x)) ** 2, 0);
  const error = Math.sqrt(rest / (count - 2) / squares);
  return `${slope.toFixed(2)} ± ${error.toFixed(2)}`;
}

/** A table in Markdown; the first column is text, the others are numbers. */
export function tableOf(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const rule = heads.map((_, k) => (k === 0 ? "---" : "---:"));
  return [heads, rule, ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
}
