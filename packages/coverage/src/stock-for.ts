import { type Outcome, success } from "@tapewise/outcome";
import type { About, JointModel } from "@tapewise/population";
import { binomialQuantile } from "./binomial.ts";
import { chanceOfEnough } from "./chance-of-enough.ts";
import type { Charts } from "./coverage.ts";
import { layInRows } from "./lay-in-rows.ts";
import { memberTypes } from "./member-types.ts";
import { requireChance, requireCount } from "./require-argument.ts";

/** Whom a stock is for. */
export interface StockRequest {
  /** How many people may want a pack at the same time. */
  readonly members: number;
  /** With what chance nobody whom a size fits shall go without. */
  readonly chance: number;
  /** How packs are given out; `flexible` where it is left out. */
  readonly rule?: StockRule;
}

/**
 * - `flexible`: whoever fits two neighbouring sizes takes the one that is left. The fewest packs that no single one
 *   can be taken from.
 * - `each-size`: everybody takes the size of the choice, and each size by itself is enough with a chance of
 *   1 − (1 − chance) / number of sizes (Bonferroni). More packs; more members or a higher chance never lower any of
 *   the numbers.
 */
export type StockRule = "flexible" | "each-size";

/** How many of one size. */
export interface SizeStock {
  readonly chart: string;
  readonly size: string;
  readonly count: number;
}

/** What to stock. */
export interface Stock {
  readonly people: About;
  readonly members: number;
  readonly sizes: readonly SizeStock[];
  readonly total: number;
  /** The chance that this stock is enough, exact for people drawn independently of each other. */
  readonly chance: number;
  /**
   * What the chance was computed for. `any-that-fits`: everybody takes any size that fits. `two-sizes`: some whom
   * three or more sizes fit were held to two of them. `best-size`: everybody takes the size of the choice. The last
   * two err on the safe side: who gives packs out more freely needs no more.
   */
  readonly assignment: "any-that-fits" | "two-sizes" | "best-size";
  /** How many of the members no size is expected to fit; nothing is stocked for them. */
  readonly expectedUnserved: number;
}

/** Beyond this many members the flexible rule would take long, and gains little: `each-size` is used. */
const MOST_FLEXIBLE = 150;

/** The stock from which packs are taken away one by one: the same for every chance below, so that they are nested. */
const AMPLE = 1 - 1e-6;

/**
 * How many of each size to stock for so many members, so that nobody whom a size fits goes without, with a stated
 * chance. Members are drawn at random from the population, independently of each other; people whom no size fits
 * take nothing and are told apart.
 *
 * The flexible rule starts from an ample stock and takes away, one by one, the pack that costs the least chance, as
 * long as the exact chance stays at what is asked (see {@link Stock}). Above 150 members `each-size` takes its place.
 *
 * Issue codes as of {@link stockShares}.
 *
 * @throws {@link InvalidArgumentError} when `members` is no whole number above 0, or `chance` is not between 0 and 1.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { stockFor } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,36-41\nM,40-45\n", { chart: "Doily 45" });
 * const outcome = stockFor(chart, referencePopulation("women"), { members: 40, chance: 0.95 });
 * outcome.ok && outcome.value.sizes.map(({ size, count }) => `${count} ${size}`); // => ["25 S", "18 M"]
 * outcome.ok && outcome.value.chance >= 0.95; // => true
 * ```
 */
export function stockFor(charts: Charts, population: JointModel, request: StockRequest): Outcome<Stock> {
  const { members, chance } = request;
  requireCount("members", members, 1);
  requireChance("chance", chance);
  const sorted = memberTypes(charts, population);
  if (!sorted.ok) return sorted;
  const { plan, types } = sorted.value;
  const given = plan.sizes.map((_, place) =>
    types.reduce((sum, { best, share }) => (best === place ? sum + share : sum), 0),
  );
  const eachSize = (level: number): number[] =>
    given.map((share) => binomialQuantile(members, Math.min(1, share), 1 - (1 - level) / given.length));
  const isFlexible = request.rule !== "each-size" && members <= MOST_FLEXIBLE;
  const { order, rows, isWhole } = layInRows(sorted.value);
  const best = order.map((place) => ({ own: given[place] ?? 0, shared: 0 }));
  const chanceOf = chanceOfEnough(isFlexible ? rows : best, members);
  const inOrder = (counts: readonly number[]): number[] => order.map((place) => counts[place] ?? 0);
  const counts = isFlexible
    ? takeAway(inOrder(eachSize(Math.max(AMPLE, chance))), chanceOf, chance)
    : inOrder(eachSize(chance));
  const served = types.reduce((sum, { share }) => sum + share, 0);
  return success(
    {
      people: population.about,
      members,
      sizes: plan.sizes.map(({ chart, size }, place) => ({
        chart,
        size,
        count: counts[order.indexOf(place)] ?? 0,
      })),
      total: counts.reduce((sum, count) => sum + count, 0),
      chance: chanceOf(counts),
      assignment: isFlexible ? (isWhole ? "any-that-fits" : "two-sizes") : "best-size",
      expectedUnserved: members * Math.max(0, 1 - served),
    },
    sorted.issues,
  );
}

/** Takes packs away while what is left is enough; of equal ones the first. */
function takeAway(
  ample: readonly number[],
  chanceOf: (stock: readonly number[]) => number,
  chance: number,
): readonly number[] {
  let stock = ample;
  for (;;) {
    let next: { readonly stock: readonly number[]; readonly chance: number } | undefined;
    for (const [place, count] of stock.entries()) {
      if (count === 0) continue;
      const fewer = stock.with(place, count - 1);
      const left = chanceOf(fewer);
      if (next === undefined || left > next.chance) next = { stock: fewer, chance: left };
    }
    if (next === undefined || next.chance < chance) return stock;
    stock = next.stock;
  }
}
