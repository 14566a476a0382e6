import { interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { About, Distribution, JointModel } from "@tapewise/population";
import { bestPlaces } from "./best-places.ts";
import { type CutGrid, createCutGrid } from "./cut-grid.ts";
import { requireCount, requireLength, requirePositive } from "./require-argument.ts";

interface CutBasis {
  readonly population: JointModel;
  readonly dimension: DimensionId;
  /** How many sizes. */
  readonly count: number;
  /** Ranges begin at whole multiples of this; 1 mm where it is left out. */
  readonly stepMm?: number;
}

/**
 * - `served`: as many people as possible within the ranges. Needs the span over which a size adjusts.
 * - `misfit`: the smallest expected distance from a person to the nearest range. Without a span every size is of one
 *   fixed length.
 */
export type CutRequest =
  | (CutBasis & { readonly goal: "served"; readonly spanMm: number })
  | (CutBasis & { readonly goal: "misfit"; readonly spanMm?: number });

/** One size. */
export interface CutRange {
  /** What the size adjusts over; both ends are the same for a fixed length. */
  readonly fromMm: number;
  readonly toMm: number;
  /** People within it. */
  readonly within: number;
  /** People who are nearer to it than to any other, those within it included. */
  readonly nearest: number;
}

/** The best ranges of one number. */
export interface CutPlan {
  readonly count: number;
  readonly ranges: readonly CutRange[];
  /** People within at least one range. */
  readonly served: number;
  /** Expected distance to the nearest range, in mm, of everybody. */
  readonly expectedMisfitMm: number;
}

/** Where sizes are best cut. */
export interface SizeCuts extends CutPlan {
  readonly people: About;
  readonly dimension: DimensionId;
  readonly goal: "served" | "misfit";
  readonly spanMm: number;
  readonly stepMm: number;
  /** The best ranges of every number from 1 to the one asked for. */
  readonly growth: readonly CutPlan[];
}

/**
 * Where sizes are best cut for some people: exactly the best among all ranges that begin at whole multiples of the
 * step, by dynamic programming, for the number asked for and every smaller one. Ranges may overlap where they would
 * anyway serve everybody.
 *
 * The expected misfit is ∫ distance dF, by parts from ∫ F, which three-point Gauss–Legendre rules of half a step give.
 *
 * @throws {@link InvalidArgumentError} when the population has not the dimension, the count is no whole number
 * above 0, the span or the step not a finite length, or the step leaves more than 4,000 places.
 *
 * @example
 * ```ts
 * import { cutSizes } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const population = referencePopulation("women");
 * const cuts = cutSizes({ population, dimension: "torso-length", count: 2, goal: "served", spanMm: 50 });
 * cuts.ranges.map(({ fromMm, toMm }) => [fromMm, toMm]); // => [[350, 400], [400, 450]]
 * cuts.growth.map(({ served }) => served.toFixed(2)); // => ["0.73", "0.97"]
 * ```
 */
export function cutSizes(request: CutRequest): SizeCuts {
  const { population, dimension, count, goal, spanMm = 0, stepMm = 1 } = request;
  requireCount("count", count, 1);
  requirePositive("stepMm", stepMm);
  if (goal === "served") requirePositive("spanMm", spanMm);
  else requireLength("spanMm", spanMm);
  if (goal !== "served" && goal !== "misfit") {
    throw new InvalidArgumentError("goal", goal, '"served" or "misfit"');
  }
  const distribution = population.distribution(dimension);
  const grid = createCutGrid(distribution, spanMm, stepMm, count);
  const growth = bestPlaces(grid, count, goal).map((places) => planOf(places, grid, distribution));
  const best = growth[count - 1];
  if (best === undefined) throw new InvalidArgumentError("count", count, "a number of sizes");
  return { people: population.about, dimension, goal, spanMm, stepMm, growth, ...best };
}

function planOf(places: readonly number[], grid: CutGrid, distribution: Distribution): CutPlan {
  const { starts, spanMm } = grid;
  const [first = 0] = places;
  let served = grid.within[first] ?? 0;
  let misfit = grid.misfitBelow(first) + grid.misfitAbove(places.at(-1) ?? 0);
  for (const [index, place] of places.entries()) {
    const earlier = places[index - 1];
    if (earlier === undefined) continue;
    served += grid.added(earlier, place);
    misfit += grid.misfitBetween(earlier, place);
  }
  const startOf = (index: number): number => starts[places[index] ?? 0] ?? 0;
  const ranges = places.map((place, index): CutRange => {
    const fromMm = starts[place] ?? 0;
    const toMm = fromMm + spanMm;
    const low = index === 0 ? Number.NEGATIVE_INFINITY : (startOf(index - 1) + spanMm + fromMm) / 2;
    const high = index === places.length - 1 ? Number.POSITIVE_INFINITY : (toMm + startOf(index + 1)) / 2;
    return {
      fromMm,
      toMm,
      within: distribution.probability(interval(fromMm, toMm)),
      nearest: distribution.probability(interval(low, high, { fromClosed: false })),
    };
  });
  return { count: places.length, ranges, served: Math.min(1, served), expectedMisfitMm: Math.max(0, misfit) };
}
