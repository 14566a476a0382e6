import { contains, type Interval, union } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import { InvalidArgumentError, type Outcome, success } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import { chartCoverage } from "../chart-coverage.ts";
import type { Charts } from "../coverage.ts";
import { spoken } from "../plan.ts";
import { planCharts } from "../plan-charts.ts";
import { isMixture } from "../resample.ts";
import type { SurveyOptions } from "../survey.ts";
import {
  citing,
  describeSample,
  type FigureText,
  type FigureUnit,
  writeLength,
  writeShare,
} from "./figure-text.ts";

/** A density curve. */
export interface FigureCurve {
  readonly label: string;
  /** Lengths in mm, and the density per mm there; of a part of a mixture times its weight. */
  readonly points: readonly (readonly [mm: number, density: number])[];
}

/** The sizes of one chart as bars. A missing end is open. */
export interface FigureRow {
  readonly chart: string;
  readonly sizes: readonly {
    readonly size: string;
    readonly fromMm?: number;
    readonly toMm?: number;
    /** People whom the size fits, by every dimension that it was held against. */
    readonly served: number;
  }[];
}

/** Charts over the people that they are for, in the dimension that the first chart goes by. */
export interface ChartFigure {
  readonly kind: "chart-over-people";
  readonly text: FigureText;
  readonly dimension: DimensionId;
  readonly fromMm: number;
  readonly toMm: number;
  /** All people first, then the parts of a mixture. */
  readonly curves: readonly FigureCurve[];
  readonly rows: readonly FigureRow[];
  /** What the rows cover together in this dimension. */
  readonly covered: readonly Interval[];
  readonly served: number;
}

/** What the figure needs to know besides charts and people. */
export interface ChartFigureOptions {
  readonly unit: FigureUnit;
  readonly survey?: SurveyOptions;
}

const POINTS = 160;

/**
 * The data of a picture of charts over the people that they are for. Draw it with {@link drawChartFigure}.
 *
 * Issue codes as of {@link chartCoverage}.
 *
 * @throws {@link InvalidArgumentError} for an empty list of charts, or a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { chartFigure } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,36-41\nM,40-45\n", { chart: "Doily 45" });
 * const figure = chartFigure(chart, referencePopulation("women"), { unit: "cm", survey: { people: 990 } });
 * figure.ok && figure.value.text.title; // => "Doily 45 over the torso length of women"
 * figure.ok && figure.value.text.sample; // => "women, 990 people measured"
 * ```
 */
export function chartFigure(
  charts: Charts,
  population: JointModel,
  { unit, survey }: ChartFigureOptions,
): Outcome<ChartFigure> {
  if (unit !== "cm" && unit !== "in") throw new InvalidArgumentError("unit", unit, '"cm" or "in"');
  const planned = planCharts(charts, population);
  if (!planned.ok) return planned;
  const outcome = chartCoverage(charts, population);
  if (!outcome.ok) return outcome;
  const coverage = outcome.value;
  const plan = planned.value;
  const dimension = plan.sizes[0]?.mainDimension ?? plan.judged[0];
  if (dimension === undefined) throw new InvalidArgumentError("charts", charts, "a chart with a size");
  const shown = plan.sizes
    .map((size, place) => ({ ...size, served: coverage.sizes[place]?.served.share ?? 0 }))
    .filter((size) => size.mainDimension === dimension);
  const distribution = population.distribution(dimension);
  const low = distribution.quantile(0.0005);
  const high = distribution.quantile(0.9995);
  const ends = shown.flatMap(({ main }) => [main.from, main.to]).filter(Number.isFinite);
  const air = (high - low) / 20;
  // Ranges far out are cut off, so that the people stay in sight.
  const fromMm = Math.max(Math.min(low, ...ends) - air, low - (high - low) / 3);
  const toMm = Math.min(Math.max(high, ...ends) + air, high + (high - low) / 3);
  const curve = (label: string, weight: number, model: JointModel): FigureCurve => ({
    label,
    points: Array.from({ length: POINTS + 1 }, (_, k) => {
      const mm = fromMm + ((toMm - fromMm) * k) / POINTS;
      return [mm, weight * model.distribution(dimension).density(mm)];
    }),
  });
  const names = [...new Set(shown.map(({ chart }) => chart))];
  const whose = `${spoken(dimension)} of ${population.about.label}`;
  const what = names.length === 1 ? (names[0] ?? "") : `${names.length} charts`;
  const covered = union(...shown.map(({ main }) => main));
  const share = coverage.served.share;
  const description = [
    `Curve of the ${whose}, from ${writeLength(fromMm, unit)} to ${writeLength(toMm, unit)} ${unit}.`,
    ...shown.map(
      ({ chart, size, main, served }) =>
        `${chart}, size ${size}: ${writeRange(main, unit)}, fits ${writeShare(served)}.`,
    ),
    `At least one size fits ${writeShare(share)}; none fits ${writeShare(1 - share)}.`,
  ];
  return success(
    {
      kind: "chart-over-people",
      text: {
        title: `${what} over the ${whose}`,
        description: description.join(" "),
        unit,
        sample: describeSample(population, survey?.people),
        ...citing(population.about),
      },
      dimension,
      fromMm,
      toMm,
      curves: [
        curve(population.about.label, 1, population),
        ...(isMixture(population)
          ? population.parts.map(({ weight, model }) => curve(model.about.label, weight, model))
          : []),
      ],
      rows: names.map((chart) => ({
        chart,
        sizes: shown
          .filter((size) => size.chart === chart)
          .map(({ size, main, served }) => ({
            size,
            ...(Number.isFinite(main.from) ? { fromMm: main.from } : {}),
            ...(Number.isFinite(main.to) ? { toMm: main.to } : {}),
            served,
          })),
      })),
      covered,
      served: share,
    },
    outcome.issues,
  );
}

function writeRange(range: Interval, unit: FigureUnit): string {
  if (contains(range, -1e9))
    return contains(range, 1e9) ? "any length" : `up to ${writeLength(range.to, unit)} ${unit}`;
  if (contains(range, 1e9)) return `from ${writeLength(range.from, unit)} ${unit} on`;
  return `${writeLength(range.from, unit)} to ${writeLength(range.to, unit)} ${unit}`;
}
