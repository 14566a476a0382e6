import type { DimensionId } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import type { SizeCuts } from "../cut-sizes.ts";
import { spoken } from "../plan.ts";
import type { SurveyOptions } from "../survey.ts";
import {
  citing,
  describeSample,
  type FigureText,
  type FigureUnit,
  writeLength,
  writeShare,
} from "./figure-text.ts";

/** How what a chart can do grows with the number of its sizes. */
export interface GrowthFigure {
  readonly kind: "growth-by-count";
  readonly text: FigureText;
  readonly dimension: DimensionId;
  /** What `points` tell: shares from 0 to 1, or expected distances in mm. */
  readonly measure: "served" | "misfit";
  readonly points: readonly { readonly count: number; readonly value: number }[];
}

/** What the figure needs to know besides the cuts. */
export interface GrowthFigureOptions {
  /** The population that was cut for. */
  readonly population: JointModel;
  readonly unit: FigureUnit;
  readonly survey?: SurveyOptions;
}

/**
 * The data of a picture of how the share served, or the expected misfit, changes with the number of sizes. Draw it
 * with {@link drawGrowthFigure}.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { cutSizes, growthFigure } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const population = referencePopulation("women");
 * const cuts = cutSizes({ population, dimension: "torso-length", count: 3, goal: "served", spanMm: 40 });
 * const figure = growthFigure(cuts, { population, unit: "cm", survey: { people: 990 } });
 * figure.points.map(({ count }) => count); // => [1, 2, 3]
 * figure.text.title; // => "Women served by the best sizes of 4 cm, by their number"
 * ```
 */
export function growthFigure(
  cuts: SizeCuts,
  { population, unit, survey }: GrowthFigureOptions,
): GrowthFigure {
  if (unit !== "cm" && unit !== "in") throw new InvalidArgumentError("unit", unit, '"cm" or "in"');
  const isServed = cuts.goal === "served";
  const points = cuts.growth.map(({ count, served, expectedMisfitMm }) => ({
    count,
    value: isServed ? served : expectedMisfitMm,
  }));
  const what = cuts.spanMm === 0 ? "fixed lengths" : `sizes of ${writeLength(cuts.spanMm, unit)} ${unit}`;
  const people = cuts.people.label;
  const title = isServed
    ? `${people.slice(0, 1).toUpperCase()}${people.slice(1)} served by the best ${what}, by their number`
    : `Expected distance of ${people} to the best ${what}, by their number`;
  const value = (one: number): string => (isServed ? writeShare(one) : `${writeLength(one, unit)} ${unit}`);
  return {
    kind: "growth-by-count",
    text: {
      title,
      description: `By ${spoken(cuts.dimension)}. ${points
        .map((point) => `${point.count} ${point.count === 1 ? "size" : "sizes"}: ${value(point.value)}.`)
        .join(" ")}`,
      unit,
      sample: describeSample(population, survey?.people),
      ...citing(cuts.people),
    },
    dimension: cuts.dimension,
    measure: isServed ? "served" : "misfit",
    points,
  };
}
