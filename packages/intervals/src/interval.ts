/**
 * A set of numbers without holes. `from` may be `-Infinity` and `to` may be `Infinity` (an open end
 * of a chart); an infinite end is never closed. `from <= to` always holds, and `from === to` only
 * with both ends closed (a single point). Make one with `interval` or `safeInterval`.
 */
export interface Interval {
  readonly from: number;
  readonly to: number;
  readonly fromClosed: boolean;
  readonly toClosed: boolean;
}
