import type { Interval } from "./interval.ts";

/**
 * A place between numbers: just before `at`, or just after it. Every interval is all that lies between
 * two cuts, so that open and closed ends need no cases of their own: `[1, 2)` ends at the cut before 2,
 * which is where `[2, 3]` begins.
 */
export interface Cut {
  readonly at: number;
  readonly after: boolean;
}

export function lowerCut(interval: Interval): Cut {
  return { at: interval.from, after: !interval.fromClosed };
}

export function upperCut(interval: Interval): Cut {
  return { at: interval.to, after: interval.toClosed };
}

/** Negative when `a` comes first, positive when `b` does, zero when they are the same place. */
export function compareCuts(a: Cut, b: Cut): number {
  if (a.at === b.at) return Number(a.after) - Number(b.after);
  return a.at < b.at ? -1 : 1;
}

export function earlierCut(a: Cut, b: Cut): Cut {
  return compareCuts(a, b) <= 0 ? a : b;
}

export function laterCut(a: Cut, b: Cut): Cut {
  return compareCuts(a, b) >= 0 ? a : b;
}

/** What lies between two cuts; nothing when the first is not before the second. */
export function betweenCuts(lower: Cut, upper: Cut): Interval | undefined {
  if (compareCuts(lower, upper) >= 0) return undefined;
  return { from: lower.at, to: upper.at, fromClosed: !lower.after, toClosed: upper.after };
}
