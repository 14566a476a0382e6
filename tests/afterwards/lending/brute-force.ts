import type { LendingPolicy, LendingTable } from "@tapewise/afterwards";

/** The best way to lend, by trying all of them: its worth in billionths or millionths, and the place of each member. */
export interface Tried {
  readonly worth: bigint;
  readonly places: readonly number[];
}

/**
 * Tries every way to lend, in the order of the places of the first member, then the second, and so on, to go without
 * being the last; the first of the best is kept.
 */
export function tryAll(table: LendingTable, policy: LendingPolicy): Tried {
  const { members, shelf, chances, misfitsMm } = table;
  const { goal, unservedCost, leastChance = 0 } = policy;
  const unit = goal === "chance" ? 1e9 : 1e6;
  const figure = (i: number, j: number): bigint | undefined => {
    const chance = chances[i]?.[j] ?? 0;
    if (j === shelf.length) return -BigInt(Math.round(unservedCost * unit));
    if (chance === 0 || chance < leastChance) return undefined;
    return goal === "chance"
      ? BigInt(Math.round(chance * unit))
      : -BigInt(Math.round((misfitsMm?.[i]?.[j] ?? 0) * unit));
  };
  let best: Tried | undefined;
  const go = (places: readonly number[], left: readonly number[], worth: bigint): void => {
    const i = places.length;
    if (i === members.length) {
      if (best === undefined || worth > best.worth) best = { worth, places };
      return;
    }
    for (let j = 0; j <= shelf.length; j += 1) {
      const gained = figure(i, j);
      const count = left[j] ?? 0;
      if (gained !== undefined && (j === shelf.length || count > 0)) {
        go([...places, j], left.with(j, count - 1), worth + gained);
      }
    }
  };
  go([], [...shelf.map(({ count }) => count), members.length], 0n);
  if (best === undefined) throw new Error("there is always the way to lend nothing");
  return best;
}
