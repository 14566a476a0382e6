import type { Transport } from "./transport.ts";

/** What one more of a place would change. */
export interface OneMore {
  /** By how much the least cost falls: exactly what a solution with one more would cost less. */
  readonly saving: number;
  /** The member who would then not go without, where there is one. */
  readonly serves: number | undefined;
}

/**
 * What one more of each place is worth (its shadow price). Somebody moves there, somebody else may move into what they
 * leave, and so on back to somebody whose place stays open: the cheapest such chain, found by relaxing the moves
 * between places until nothing changes (Bellman 1958; an assignment of least cost has no circle of moves that saves).
 */
export function oneMore({ costs, counts }: Transport, at: Int32Array): readonly OneMore[] {
  const width = counts.length;
  const without = width - 1;
  /** From each place to each other: the cheapest move, and whose it is. */
  const step = new Float64Array(width * width).fill(Number.POSITIVE_INFINITY);
  const by = new Int32Array(width * width).fill(-1);
  for (const [member, row] of costs.entries()) {
    const from = at[member] ?? without;
    for (let to = 0; to < width; to += 1) {
      const cost = (row[to] ?? 0) - (row[from] ?? 0);
      if (cost < (step[from * width + to] ?? 0)) {
        step[from * width + to] = cost;
        by[from * width + to] = member;
      }
    }
  }
  const saved = new Float64Array(width);
  const start = new Int32Array(width).fill(-1);
  for (let round = 0, isChanged = true; isChanged && round <= width; round += 1) {
    isChanged = false;
    for (let from = 0; from < width; from += 1) {
      for (let to = 0; to < without; to += 1) {
        const saving = (saved[from] ?? 0) - (step[from * width + to] ?? 0);
        if (from === to || !(saving > (saved[to] ?? 0))) continue;
        saved[to] = saving;
        start[to] = from === without ? (by[from * width + to] ?? -1) : (start[from] ?? -1);
        isChanged = true;
      }
    }
  }
  return counts.slice(0, without).map((_, place) => ({
    saving: saved[place] ?? 0,
    serves: (start[place] ?? -1) === -1 ? undefined : start[place],
  }));
}
