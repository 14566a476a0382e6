import { InvalidArgumentError, type Outcome, success } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import { createRandom, type Random } from "@tapewise/statistics";
import type { Charts } from "./coverage.ts";
import { type MemberType, memberTypes } from "./member-types.ts";
import { requireCount } from "./require-argument.ts";

/** A stock that is to be tried out. */
export interface StockTrial {
  readonly members: number;
  /** How many there are of each size, in the order of the charts; sizes that are not judged have none. */
  readonly counts: readonly number[];
  /** How many crews are drawn; 2000 where it is left out. */
  readonly trials?: number;
  /** Where the stream of random numbers starts; 1 where it is left out. */
  readonly seed?: number;
}

/** How often a stock was enough. */
export interface StockTried {
  /** Share of crews in which nobody whom a size fits went without. */
  readonly enough: number;
  /** Its standard error. */
  readonly standardError: number;
  readonly trials: number;
}

/**
 * Draws crews at random and gives packs out as well as can be done: anybody may have any size that fits, and others
 * change theirs to make room (a greatest matching by augmenting paths). A check of {@link stockFor} that shares
 * nothing with it but who fits which size.
 *
 * Issue codes as of {@link stockShares}.
 *
 * @throws {@link InvalidArgumentError} when there is not a count for each size, or a number is no count.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { tryStock } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,36-41\nM,40-45\n", { chart: "Doily 45" });
 * const plenty = tryStock(chart, referencePopulation("women"), { members: 5, counts: [5, 5], trials: 100 });
 * plenty.ok && plenty.value.enough; // => 1
 * ```
 */
export function tryStock(charts: Charts, population: JointModel, trial: StockTrial): Outcome<StockTried> {
  const { members, counts, trials = 2000, seed = 1 } = trial;
  requireCount("members", members, 1);
  requireCount("trials", trials, 1);
  const sorted = memberTypes(charts, population);
  if (!sorted.ok) return sorted;
  const { plan, types } = sorted.value;
  if (counts.length !== plan.sizes.length) {
    throw new InvalidArgumentError("counts", counts, `a count for each of ${plan.sizes.length} sizes`);
  }
  for (const [k, count] of counts.entries()) requireCount(`counts[${k}]`, count, 0);
  const random = createRandom(seed);
  let enough = 0;
  for (let k = 0; k < trials; k += 1) {
    if (isEnough(drawCrew(types, members, random), counts)) enough += 1;
  }
  const share = enough / trials;
  return success(
    { enough: share, standardError: Math.sqrt((share * (1 - share)) / trials), trials },
    sorted.issues,
  );
}

/** For each member whom a size fits: the sizes that do. */
function drawCrew(types: readonly MemberType[], members: number, random: Random): (readonly number[])[] {
  const crew: (readonly number[])[] = [];
  for (let k = 0; k < members; k += 1) {
    let rest = random.uniform();
    const type = types.find(({ share }) => {
      rest -= share;
      return rest < 0;
    });
    if (type !== undefined) crew.push(type.sizes);
  }
  return crew;
}

function isEnough(crew: readonly (readonly number[])[], counts: readonly number[]): boolean {
  const holders: number[][] = counts.map(() => []);
  const give = (member: number, tried: Set<number>): boolean => {
    for (const size of crew[member] ?? []) {
      if (tried.has(size)) continue;
      tried.add(size);
      const having = holders[size] ?? [];
      if (having.length < (counts[size] ?? 0)) {
        having.push(member);
        return true;
      }
      for (const [place, holder] of having.entries()) {
        if (!give(holder, tried)) continue;
        having[place] = member;
        return true;
      }
    }
    return false;
  };
  return crew.every((_, member) => give(member, new Set()));
}
