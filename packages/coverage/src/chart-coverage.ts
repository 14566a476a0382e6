import { complement, type Interval } from "@tapewise/intervals";
import { type Outcome, success } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import { withBands } from "./bands.ts";
import { type Cell, cellsOf } from "./cells.ts";
import type { Charts, Coverage, CoverageOptions, Outside } from "./coverage.ts";
import type { Plan } from "./plan.ts";
import { planCharts } from "./plan-charts.ts";
import { isMixture } from "./resample.ts";
import type { Share } from "./share.ts";

/**
 * Whom a chart, or a shelf of charts, serves among some people: by each size, by one, by several, by none, and
 * who lies below, above and in the gaps of each dimension.
 *
 * Somebody is served by a size when every dimension that it states and that the population knows lies in its
 * range. The ranges of all sizes are taken apart into boxes that do not overlap, so that the shares add up: exactly
 * as far as the population's box probabilities are (10⁻¹⁵ for one and two normal dimensions). Hip belts that come
 * in sizes of their own serve whom one of them fits.
 *
 * Bands tell what the size of the survey leaves open and nothing else; see {@link SurveyOptions}.
 *
 * Issue codes: `coverage-chart-without-sizes`, `coverage-nothing-judged` (the chart is left out; a failure when it
 * is the only one); `coverage-dimension-left-out`, `coverage-girth-taken-as`, `coverage-size-not-judged` (warnings).
 *
 * @throws {@link InvalidArgumentError} for an empty list of charts, or a survey without a number of people for
 * each part of a mixture.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { chartCoverage } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,43-48\n", { chart: "Doily 45" });
 * const outcome = chartCoverage(chart, referencePopulation("women"));
 * outcome.ok && outcome.value.served.share.toFixed(3); // => "0.811"
 * outcome.ok && outcome.value.outside[0]?.below.share.toFixed(3); // => "0.189"
 * ```
 */
export function chartCoverage(
  charts: Charts,
  population: JointModel,
  options: CoverageOptions = {},
): Outcome<Coverage> {
  const planned = planCharts(charts, population);
  if (!planned.ok) return planned;
  return success(coverageOf(planned.value, population, options), planned.issues);
}

function coverageOf(plan: Plan, population: JointModel, { survey }: CoverageOptions): Coverage {
  const cells = cellsOf(
    plan.offers.map(({ box }) => box),
    plan.judged,
  );
  const holes = plan.spans.map(({ dimension, covered }) => ({ dimension, holes: complement(covered) }));
  const measure = (model: JointModel): readonly number[] => [
    ...jointShares(plan, cells, model),
    ...holes.flatMap(({ dimension, holes }) =>
      holes.map((hole) => model.boxProbability({ [dimension]: hole }).probability),
    ),
  ];
  const { shares, band } = withBands(population, plan.judged, measure, survey);
  const at = (place: number): Share => shares[place] ?? { share: 0 };
  const count = plan.sizes.length;
  let next = 2 * count + 4;
  const outside = holes.map(({ dimension, holes }): Outside => {
    const beside = holes.map((within) => ({ within, people: at(next++) }));
    return {
      dimension,
      below: beside.find(({ within }) => isBelow(within))?.people ?? nobody(band !== undefined),
      gaps: beside.filter(({ within }) => !isBelow(within) && !isAbove(within)),
      above: beside.find(({ within }) => isAbove(within))?.people ?? nobody(band !== undefined),
    };
  });
  return {
    people: population.about,
    sizes: plan.sizes.map(({ chart, size }, place) => ({
      chart,
      size,
      served: at(place),
      only: at(count + place),
    })),
    served: at(2 * count),
    byOne: at(2 * count + 1),
    bySeveral: at(2 * count + 2),
    byNone: at(2 * count + 3),
    outside,
    judged: plan.judged,
    leftOut: plan.leftOut,
    parts: isMixture(population)
      ? population.parts.map(({ weight, model }, k) => ({
          weight,
          coverage: coverageOf(plan, model, survey === undefined ? {} : { survey: partOf(survey, k) }),
        }))
      : [],
    ...(band === undefined ? {} : { band }),
    numericalError: isCounted(population)
      ? 0
      : cells.reduce((sum, { box }) => sum + population.boxProbability(box).error, 0),
  };
}

/** Served by each size, by each size alone, by any, by one, by several, by none. */
function jointShares(plan: Plan, cells: readonly Cell[], model: JointModel): readonly number[] {
  const served = plan.sizes.map(() => 0);
  const only = plan.sizes.map(() => 0);
  let [byOne, bySeveral] = [0, 0];
  for (const { box, inside } of cells) {
    const { probability } = model.boxProbability(box);
    const sizes = new Set(inside.map((offer) => plan.offers[offer]?.size ?? 0));
    for (const size of sizes) {
      served[size] = (served[size] ?? 0) + probability;
      if (sizes.size === 1) only[size] = (only[size] ?? 0) + probability;
    }
    if (sizes.size === 1) byOne += probability;
    else bySeveral += probability;
  }
  // Many cells that are each rounded may add up to a little more than everybody.
  const all = Math.min(1, byOne + bySeveral);
  return [...served, ...only, all, byOne, bySeveral, 1 - all].map((share) => Math.min(1, share));
}

function partOf(
  survey: NonNullable<CoverageOptions["survey"]>,
  k: number,
): NonNullable<CoverageOptions["survey"]> {
  const { people } = survey;
  return typeof people === "number" ? survey : { ...survey, people: people.slice(k, k + 1) };
}

function isCounted(population: JointModel): boolean {
  if (isMixture(population)) return population.parts.every(({ model }) => isCounted(model));
  return population.kind === "empirical";
}

function nobody(banded: boolean): Share {
  return banded ? { share: 0, low: 0, high: 0 } : { share: 0 };
}

function isBelow({ from }: Interval): boolean {
  return from === Number.NEGATIVE_INFINITY;
}

function isAbove({ to }: Interval): boolean {
  return to === Number.POSITIVE_INFINITY;
}
