import { checkLending } from "./check-lending.ts";
import { firstOfEquals } from "./first-of-equals.ts";
import type { Lending, LendingPolicy, LendingTable, Lent, NextPack, Without } from "./lending.ts";
import { oneMore } from "./one-more.ts";
import { transport } from "./transport.ts";

/** Chances are taken to billionths and misfits to millionths of a millimetre: sums of whole numbers are exact. */
const UNITS = { chance: 1e9, misfit: 1e6 } as const;

/**
 * Lends packs of which there are few so that the whole fits as well as it can: the largest sum of chances, or the
 * smallest sum of expected misfits, with a stated cost for everybody who goes without. The answer is exact: no other
 * way to lend them comes out better, chances counted to billionths and misfits to millionths of a millimetre.
 *
 * Of ways that come out equally well, that one is taken in which the first member has the earliest pack of the list
 * that they have in any of them, to go without being the last; then the second member, and so on.
 *
 * The sum is the crew's gain and not each member's: whom it leaves with a poor fit, `leastChance` protects. Where a bad
 * fit can hurt (pain or numbness, an injury, pregnancy, a child), let a professional fitter choose.
 *
 * Solved by a small solver of our own, because the packs of one size are alike: a path of moves then runs over sizes
 * and not over single packs. Packages for assignment want a column for each single pack; a general one for linear
 * programmes finds the same sum, takes longer and brings three and a half megabytes. See `benchmarks/lending.ts`.
 *
 * @throws {@link InvalidArgumentError} when names come twice, a count is no whole number, a table has not the shape of
 * the lists, a figure is out of its bounds, or the goal is `misfit` and there are no misfits.
 *
 * @example
 * ```ts
 * import { lendPacks } from "@tapewise/afterwards";
 * const lending = lendPacks(
 *   {
 *     members: ["ana", "ben", "cleo"],
 *     shelf: [{ pack: "Doily S", count: 1 }, { pack: "Doily M", count: 1 }],
 *     chances: [[0.9, 0.8], [0.75, 0], [0.1, 0.5]],
 *   },
 *   { goal: "chance", unservedCost: 1, leastChance: 0.5 },
 * );
 * lending.lent.map(({ member, pack }) => `${member}: ${pack}`); // => ["ana: Doily M", "ben: Doily S"]
 * lending.without; // => [{ member: "cleo", best: "Doily M" }]
 * lending.next; // => [{ pack: "Doily S", gain: 1.6, serves: "cleo" }, { pack: "Doily M", gain: 1.5, serves: "cleo" }]
 * ```
 */
export function lendPacks(table: LendingTable, policy: LendingPolicy): Lending {
  checkLending(table, policy);
  const { members, shelf, chances, misfitsMm } = table;
  const without = shelf.length;
  const unit = UNITS[policy.goal];
  const costs = members.map((_, i) => costsOf(chances[i] ?? [], misfitsMm?.[i], policy));
  const problem = { costs, counts: [...shelf.map(({ count }) => count), members.length] };
  const at = firstOfEquals(problem, transport(problem));

  const left = shelf.map(({ count }) => count);
  const lent: Lent[] = [];
  const unserved: Without[] = [];
  for (const [i, member] of members.entries()) {
    const place = at[i] ?? without;
    const pack = shelf[place]?.pack;
    if (pack === undefined) {
      const best = shelf[bestOf(costs[i] ?? NO_COSTS, without)]?.pack;
      unserved.push({ member, ...(best === undefined ? {} : { best }) });
      continue;
    }
    left[place] = (left[place] ?? 0) - 1;
    const misfitMm = misfitsMm?.[i]?.[place];
    lent.push({
      member,
      pack,
      chance: chances[i]?.[place] ?? 0,
      ...(misfitMm === undefined ? {} : { misfitMm }),
    });
  }
  const next = oneMore(problem, at).map(({ saving, serves }, place): NextPack => {
    const member = members[serves ?? -1];
    return {
      pack: shelf[place]?.pack ?? "",
      gain: saving / unit,
      ...(member === undefined ? {} : { serves: member }),
    };
  });
  return {
    lent,
    without: unserved,
    total: lent.reduce((sum, one) => sum + Math.round(figureOf(one, policy) * unit), 0) / unit,
    left: shelf.flatMap(({ pack }, place) => {
      const count = left[place] ?? 0;
      return count > 0 ? [{ pack, count }] : [];
    }),
    next: next.filter(({ gain }) => gain > 0).toSorted((a, b) => b.gain - a.gain),
  };
}

/** What each pack costs a member, and to go without; a chance counts as what it falls short of 1. */
function costsOf(
  chances: readonly number[],
  misfitsMm: readonly number[] | undefined,
  { goal, unservedCost, leastChance = 0 }: LendingPolicy,
): Float64Array {
  const unit = UNITS[goal];
  const ofPacks = chances.map((chance, place) => {
    if (chance === 0 || chance < leastChance) return Number.POSITIVE_INFINITY;
    return goal === "chance"
      ? unit - Math.round(chance * unit)
      : Math.round((misfitsMm?.[place] ?? 0) * unit);
  });
  const ofNone = Math.round(unservedCost * unit) + (goal === "chance" ? unit : 0);
  return Float64Array.of(...ofPacks, ofNone);
}

/** The first of the packs that cost a member least; none where all are ruled out. */
function bestOf(costs: Float64Array, without: number): number {
  let best = without;
  let least = Number.POSITIVE_INFINITY;
  for (let place = 0; place < without; place += 1) {
    const cost = costs[place] ?? least;
    if (cost >= least) continue;
    least = cost;
    best = place;
  }
  return best;
}

function figureOf({ chance, misfitMm }: Lent, { goal }: LendingPolicy): number {
  return goal === "chance" ? chance : (misfitMm ?? 0);
}

const NO_COSTS: Float64Array = Float64Array.of();
