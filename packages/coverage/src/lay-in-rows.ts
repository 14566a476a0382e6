import type { Row } from "./chance-of-enough.ts";
import type { MemberTypes } from "./member-types.ts";

/** Sizes in order, and who comes to them. */
export interface Rows {
  /** Places in the plan, from the smallest size to the largest. */
  readonly order: readonly number[];
  readonly rows: readonly Row[];
  /** Whether everybody may take each size that fits; otherwise some are held to two of theirs. */
  readonly isWhole: boolean;
}

/**
 * Lays people out along the sizes, each with the size that the choice gives and, where a neighbour of it fits too,
 * that one. Who could have still others is held to these two, which makes a stock err on the safe side.
 */
export function layInRows({ plan, types }: MemberTypes): Rows {
  const order = plan.sizes
    .map((_, place) => place)
    .sort((a, b) => {
      const [one, other] = [plan.sizes[a], plan.sizes[b]];
      if (one === undefined || other === undefined) return 0;
      const byRange = compare(one.main.from, other.main.from) || compare(one.main.to, other.main.to);
      return byRange || (`${one.size}\n${one.chart}` < `${other.size}\n${other.chart}` ? -1 : 1);
    });
  const rows = order.map(() => ({ own: 0, shared: 0 }));
  let isWhole = true;
  for (const { sizes, best, share } of types) {
    const at = order.indexOf(best);
    const fits = (position: number): boolean => sizes.includes(order[position] ?? -1);
    const beside = [at + 1, at - 1].filter(fits);
    if (sizes.length > Math.min(2, 1 + beside.length)) isWhole = false;
    const [next] = beside;
    const row = rows[next === undefined ? at : Math.min(at, next)];
    if (row === undefined) continue;
    if (next === undefined) row.own += share;
    else row.shared += share;
  }
  return { order, rows, isWhole };
}

function compare(a: number, b: number): number {
  return a === b ? 0 : a - b;
}
