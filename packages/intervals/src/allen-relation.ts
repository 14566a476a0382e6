/**
 * The thirteen relations of Allen's interval algebra (J. F. Allen, "Maintaining knowledge about
 * temporal intervals", Communications of the ACM 26(11), 1983, 832–843), in the usual order from
 * `before` to `after`, with his symbols and what they say of the bounds:
 *
 * | relation | symbol | a and b |
 * | --- | --- | --- |
 * | `before` | b | a.to < b.from |
 * | `meets` | m | a.to = b.from |
 * | `overlaps` | o | a.from < b.from < a.to < b.to |
 * | `starts` | s | a.from = b.from, a.to < b.to |
 * | `during` | d | b.from < a.from, a.to < b.to |
 * | `finishes` | f | b.from < a.from, a.to = b.to |
 * | `equals` | e | a.from = b.from, a.to = b.to |
 * | `finished-by` | fi | a.from < b.from, a.to = b.to |
 * | `contains` | di | a.from < b.from, b.to < a.to |
 * | `started-by` | si | a.from = b.from, b.to < a.to |
 * | `overlapped-by` | oi | b.from < a.from < b.to < a.to |
 * | `met-by` | mi | a.from = b.to |
 * | `after` | bi | b.to < a.from |
 *
 * @example
 * ```ts
 * import { allenRelations } from "@tapewise/intervals";
 * allenRelations.length; // => 13
 * ```
 */
export const allenRelations: readonly [
  "before",
  "meets",
  "overlaps",
  "starts",
  "during",
  "finishes",
  "equals",
  "finished-by",
  "contains",
  "started-by",
  "overlapped-by",
  "met-by",
  "after",
] = [
  "before",
  "meets",
  "overlaps",
  "starts",
  "during",
  "finishes",
  "equals",
  "finished-by",
  "contains",
  "started-by",
  "overlapped-by",
  "met-by",
  "after",
];

/** One of the thirteen relations that two intervals can have: see {@link allenRelations}. */
export type AllenRelation = (typeof allenRelations)[number];
