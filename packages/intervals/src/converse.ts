import type { AllenRelation } from "./allen-relation.ts";

const CONVERSES: Readonly<Record<AllenRelation, AllenRelation>> = {
  before: "after",
  meets: "met-by",
  overlaps: "overlapped-by",
  starts: "started-by",
  during: "contains",
  finishes: "finished-by",
  equals: "equals",
  "finished-by": "finishes",
  contains: "during",
  "started-by": "starts",
  "overlapped-by": "overlaps",
  "met-by": "meets",
  after: "before",
};

/**
 * The relation seen from the other side: when `a` has relation `r` to `b`, then `b` has
 * `converse(r)` to `a`.
 *
 * @example
 * ```ts
 * import { converse } from "@tapewise/intervals";
 * converse("during"); // => "contains"
 * ```
 */
export function converse(relation: AllenRelation): AllenRelation {
  return CONVERSES[relation];
}
