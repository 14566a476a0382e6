import { type Outcome, success } from "@tapewise/outcome";
import type { About, JointModel } from "@tapewise/population";
import type { Charts } from "./coverage.ts";
import { memberTypes } from "./member-types.ts";

/** What part of an order one size should be. */
export interface SizePart {
  readonly chart: string;
  readonly size: string;
  /** Of all that are ordered; the parts add up to 1 unless no size serves anybody. */
  readonly ofOrder: number;
  /** People who would be given this size, of everybody. */
  readonly ofPeople: number;
}

/** What an order should consist of. */
export interface StockShares {
  readonly people: About;
  readonly sizes: readonly SizePart[];
  /** People whom no size fits; nothing is ordered for them. */
  readonly unserved: number;
}

/**
 * What part of an order each size should be, if everybody whom a size fits takes one pack: of several sizes that
 * fit, the one with the most room to its nearer end in the dimension that the chart goes by (the rule of choice for
 * somebody measured without error). People whom none fits are told apart and not counted in.
 *
 * Issue codes as of {@link chartCoverage}, and `coverage-charts-differ` for charts that go by different dimensions.
 *
 * @throws {@link InvalidArgumentError} for an empty list of charts.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { stockShares } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,36-41\nM,40-45\n", { chart: "Doily 45" });
 * const outcome = stockShares(chart, referencePopulation("women"));
 * outcome.ok && outcome.value.sizes.map((size) => size.ofOrder.toFixed(2)); // => ["0.58", "0.42"]
 * ```
 */
export function stockShares(charts: Charts, population: JointModel): Outcome<StockShares> {
  const sorted = memberTypes(charts, population);
  if (!sorted.ok) return sorted;
  const { plan, types } = sorted.value;
  const given = plan.sizes.map((_, place) =>
    types.reduce((sum, { best, share }) => (best === place ? sum + share : sum), 0),
  );
  const served = given.reduce((sum, share) => sum + share, 0);
  return success(
    {
      people: population.about,
      sizes: plan.sizes.map(({ chart, size }, place) => ({
        chart,
        size,
        ofOrder: served > 0 ? (given[place] ?? 0) / served : 0,
        ofPeople: given[place] ?? 0,
      })),
      unserved: Math.max(0, 1 - served),
    },
    sorted.issues,
  );
}
