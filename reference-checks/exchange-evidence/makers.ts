import { evidenceDefaults, type SeenOutcome } from "@tapewise/afterwards";
import { parseChart, type SizeChart } from "@tapewise/charts";
import { interval } from "@tapewise/intervals";
import type { Random } from "@tapewise/statistics";
import type { Member } from "./crew.ts";

/** Where the ranges of a product really sit. */
export interface Truth {
  readonly offsetMm: number;
  readonly widthFactor: number;
}

/** An invented chart of torso lengths, in sizes of 5 cm that overlap by 1 cm. */
export const printed: SizeChart = parseChart(
  "size,torso-length (cm)\nXS,34-39\nS,38-43\nM,42-47\nL,46-51\nXL,50-55\n",
  { chart: "Accordion 55", maker: "Gingham Clockwork" },
);

/** The same chart under another name. */
export function named(chart: string): SizeChart {
  return { ...printed, chart };
}

/** The chart as its maker should have printed it. */
export function trueChart(truth: Truth): SizeChart {
  return {
    ...printed,
    sizes: printed.sizes.map((size) => {
      const range = size.ranges["torso-length"];
      if (range === undefined) throw new Error(`${size.name} states no torso length`);
      const { from, to } = range.interval;
      const [middle, half] = [(from + to) / 2 + truth.offsetMm, ((to - from) / 2) * truth.widthFactor];
      return {
        ...size,
        ranges: { "torso-length": { ...range, interval: interval(middle - half, middle + half) } },
      };
    }),
  };
}

/** The range of a size. */
export function rangeOf(chart: SizeChart, size: string): { readonly from: number; readonly to: number } {
  const range = chart.sizes.find(({ name }) => name === size)?.ranges["torso-length"];
  if (range === undefined) throw new Error(`${chart.chart} has no size ${size}`);
  return range.interval;
}

/** Share of packs that go back for reasons that have nothing to do with their size. */
const OTHER_REASONS = 0.05;

/**
 * What becomes of a size that somebody was given: it is kept where the body, plus what this person puts up with,
 * lies in the true range; a slip makes the report mean nothing, as the model has it. Nothing is seen of those who
 * send the pack back for other reasons.
 */
export function liveThrough(
  { trueMm, meanMm, sdMm }: Member,
  size: string,
  chart: SizeChart,
  truth: SizeChart,
  random: Random,
): SeenOutcome | undefined {
  const felt = trueMm + evidenceDefaults.backLength.toleranceMm * random.normal();
  const isSlip = random.uniform() < evidenceDefaults.slipProbability;
  const word = random.integer(0, 2);
  if (random.uniform() < OTHER_REASONS) return undefined;
  const { from, to } = rangeOf(truth, size);
  const honest = felt < from ? "below" : felt > to ? "above" : "inside";
  const side = isSlip ? ((["below", "inside", "above"] as const)[word] ?? honest) : honest;
  const stated = rangeOf(printed, size);
  return {
    ...(chart.maker === undefined ? {} : { maker: chart.maker }),
    product: chart.chart,
    dimension: "torso-length",
    fromMm: stated.from,
    toMm: stated.to,
    side,
    meanMm,
    sdMm,
  };
}
