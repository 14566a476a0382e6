import type { Interval } from "./interval.ts";

/**
 * An interval in the bracket notation of ISO 31-11 (now ISO 80000-2): a square bracket where the
 * bound belongs, a round one where it does not, `∞` where there is none.
 *
 * `formatBound` writes a finite bound; left out, bounds are written as JavaScript writes numbers.
 *
 * @example
 * ```ts
 * import { atMost, formatInterval, interval } from "@tapewise/intervals";
 * formatInterval(interval(1, 2, { toClosed: false })); // => "[1, 2)"
 * formatInterval(atMost(2.5)); // => "(-∞, 2.5]"
 * formatInterval(interval(430, 480), (mm) => `${mm / 10} cm`); // => "[43 cm, 48 cm]"
 * ```
 */
export function formatInterval(interval: Interval, formatBound: (bound: number) => string = String): string {
  const open = interval.fromClosed ? "[" : "(";
  const close = interval.toClosed ? "]" : ")";
  return `${open}${write(interval.from, formatBound)}, ${write(interval.to, formatBound)}${close}`;
}

function write(bound: number, formatBound: (bound: number) => string): string {
  if (bound === Number.POSITIVE_INFINITY) return "∞";
  if (bound === Number.NEGATIVE_INFINITY) return "-∞";
  return formatBound(bound);
}
