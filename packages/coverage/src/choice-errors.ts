import type { SizeChart } from "@tapewise/charts";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import { anticipateUncertainty, type Conditions, type ErrorDefaults } from "@tapewise/measurement";
import { InvalidArgumentError, type Outcome, success } from "@tapewise/outcome";
import type { About, JointModel } from "@tapewise/population";
import { tallyAlong, tallyDrawn } from "./choice-tally.ts";
import type { Pickable } from "./estimated-pick.ts";
import { planChart } from "./plan-chart.ts";
import { requireCount } from "./require-argument.ts";

/** How people measure themselves before they choose. */
export interface Measuring {
  /** Who measures and with what; what is left out is assumed as for readings. */
  readonly conditions: Conditions;
  /** How many readings of each dimension. */
  readonly readings: number;
  /** The step in mm that readings are rounded to; 0 for none. */
  readonly stepMm: number;
  /** Another table of errors than the default one. */
  readonly defaults?: ErrorDefaults;
}

/** How the shares are computed where a chart goes by several dimensions. */
export interface DrawOptions {
  /** How many people are drawn; 20,000 where it is left out. */
  readonly people?: number;
  /** Where the stream of random numbers starts; 1 where it is left out. */
  readonly seed?: number;
}

/** What one size is given to. */
export interface SizeGiven {
  readonly size: string;
  /** People who are given this size, of everybody. */
  readonly given: number;
  /** Those of them whom it does not fit. */
  readonly misfitted: number;
}

/** What measurement error does to the choice of a size. The first three shares add up to 1. */
export interface ChoiceErrors {
  readonly people: About;
  /** Given a size that fits. */
  readonly right: number;
  /** Given a size that does not fit although another would. */
  readonly wrong: number;
  /** No size fits, so that whichever is given does not. */
  readonly unserved: number;
  readonly sizes: readonly SizeGiven[];
  readonly judged: readonly {
    readonly dimension: DimensionId;
    readonly uncertaintyMm: number;
  }[];
  /** `summed`: one dimension, good to 10⁻⁴. `drawn`: several, people drawn at random. */
  readonly method: "summed" | "drawn";
  /** Standard error of `wrong` from drawing; 0 where it is summed. */
  readonly standardError: number;
}

/**
 * How many people would be given a size that does not fit, because they measured themselves as well as people do.
 *
 * The true length X comes from the population, the estimate is X + u·Z with Z standard normal and u the uncertainty
 * that readings under the stated conditions will have ({@link anticipateUncertainty}, at the mean length), and the
 * size given is the most probable one by that estimate alone. No prior is used, and no reason of build. Hip belts
 * that come in sizes of their own are not looked at.
 *
 * Issue codes as of {@link chartCoverage}.
 *
 * @throws {@link InvalidArgumentError} for a number of readings or of people that is none, a step that is not finite
 * or conditions that are none.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { choiceErrors } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,35-40\nM,40-45\n", { chart: "Doily 45" });
 * const women = referencePopulation("women");
 * const alone = choiceErrors(chart, women, { conditions: { measuredBy: "self" }, readings: 3, stepMm: 5 });
 * const helped = choiceErrors(chart, women, { conditions: { measuredBy: "helper" }, readings: 3, stepMm: 5 });
 * alone.ok && helped.ok && helped.value.wrong < alone.value.wrong; // => true
 * ```
 */
export function choiceErrors(
  chart: SizeChart,
  population: JointModel,
  measuring: Measuring,
  { people = 20_000, seed = 1 }: DrawOptions = {},
): Outcome<ChoiceErrors> {
  requireCount("people", people, 1);
  const planned = planChart(chart, population.variables, population.about.label);
  if (!planned.ok) return planned;
  const sizes = planned.value.sizes.flatMap(({ size, main, box }): readonly Pickable[] =>
    box === undefined ? [] : [{ name: size, main, box: lengthsOf(box) }],
  );
  const main = planned.value.sizes[0]?.mainDimension;
  const others = planned.value.judged.filter(
    (dimension) => dimension !== main && sizes.some(({ box }) => box[dimension] !== undefined),
  );
  const judged = (main === undefined ? others : [main, ...others]).map((dimension) => ({
    dimension,
    uncertaintyMm: uncertaintyOf(dimension, population, measuring),
  }));
  const [only] = judged;
  if (sizes.length === 0 || only === undefined) {
    throw new InvalidArgumentError("chart", chart.chart, "a chart with a size that can fit somebody");
  }
  const isSummed = judged.length === 1 && only.uncertaintyMm > 0;
  const tally = isSummed
    ? tallyAlong(population.distribution(only.dimension), only.dimension, only.uncertaintyMm, sizes)
    : tallyDrawn(population, judged, sizes, { people, seed });
  const { wrong, unserved, given, misfitted } = tally;
  return success(
    {
      people: population.about,
      right: Math.max(0, 1 - wrong - unserved),
      wrong,
      unserved,
      sizes: sizes.map(({ name }, place) => ({
        size: name,
        given: given[place] ?? 0,
        misfitted: misfitted[place] ?? 0,
      })),
      judged,
      method: isSummed ? "summed" : "drawn",
      standardError: isSummed ? 0 : Math.sqrt((wrong * (1 - wrong)) / people),
    },
    planned.issues,
  );
}

function uncertaintyOf(dimension: DimensionId, population: JointModel, measuring: Measuring): number {
  const { conditions, readings, stepMm, defaults } = measuring;
  return anticipateUncertainty({
    dimension,
    lengthMm: population.distribution(dimension).mean,
    count: readings,
    stepMm,
    conditions,
    ...(defaults === undefined ? {} : { defaults }),
  });
}

/** The lengths of a box; a body mass is none, and no chart states one. */
function lengthsOf(box: Pickable["box"]): Pickable["box"] {
  return Object.fromEntries(dimensionIds.flatMap((id) => (box[id] === undefined ? [] : [[id, box[id]]])));
}
