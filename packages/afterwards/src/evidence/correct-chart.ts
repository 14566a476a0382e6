import type { ChartDimension, SizeChart, SizeRange, SizeRanges } from "@tapewise/charts";
import { interval } from "@tapewise/intervals";
import type { Evidence } from "./create-evidence.ts";
import { expectedMove } from "./expected-move.ts";
import { learnProduct } from "./learn-product.ts";
import type { LearnedChart } from "./learned.ts";
import type { ProductKey } from "./seen-outcome.ts";

/** A range as outcomes have it, beside what the chart prints. */
export interface CorrectedRange {
  readonly part: "pack" | "belt";
  readonly size: string;
  readonly dimension: ChartDimension;
  readonly printed: SizeRange["interval"];
  readonly corrected: SizeRange["interval"];
  /** Standard deviation of each end in mm; 0 for an open one. */
  readonly fromSdMm: number;
  readonly toSdMm: number;
}

/** What was learned of one dimension of a chart. */
export interface ChartCorrection {
  readonly dimension: ChartDimension;
  readonly learned: LearnedChart;
}

/** A chart as outcomes have it: what `recommend` of @tapewise/fit takes in place of the printed one. */
export interface CorrectedChart {
  readonly chart: SizeChart;
  /** The dimensions in which there was something to learn from. */
  readonly known: readonly ChartCorrection[];
  /** Those in which it is sure enough to move the ranges; empty for a chart taken at its word. */
  readonly corrections: readonly ChartCorrection[];
  readonly ranges: readonly CorrectedRange[];
}

/**
 * Moves the ranges of a printed chart to where outcomes have them on average, over both possibilities, that the
 * maker's charts are as printed and that they are not: middle plus offset, half-width times factor. What the cells say (`stated`) stays as printed.
 *
 * In a dimension in which no outcome of the maker has come in, or in which it is not sure enough that the charts are not as
 * printed (`sureProbability` of the model), the chart is taken at its word; where that goes for all, the very same
 * chart is returned.
 *
 * @example
 * ```ts
 * import { correctChart, createEvidence } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45", maker: "Gingham" });
 * const evidence = createEvidence();
 * correctChart(chart, evidence).chart === chart; // => true
 * for (let i = 0; i < 10; i += 1) {
 *   evidence.add({
 *     maker: "Gingham", product: "Doily 45", dimension: "torso-length",
 *     fromMm: 420, toMm: 480, side: "below", meanMm: 440, sdMm: 8,
 *   });
 * }
 * correctChart(chart, evidence).ranges.every(({ corrected, printed }) => corrected.from > printed.from); // => true
 * ```
 */
export function correctChart(chart: SizeChart, evidence: Evidence): CorrectedChart {
  const key: ProductKey = {
    ...(chart.maker === undefined ? {} : { maker: chart.maker }),
    product: chart.chart,
  };
  const stated = new Set(
    [...chart.sizes, ...chart.belts].flatMap(({ ranges }) => Object.keys(ranges) as ChartDimension[]),
  );
  const known = [...stated]
    .filter((dimension) => evidence.tablesOf(key, dimension).length > 0)
    .map((dimension) => ({ dimension, learned: learnProduct(evidence, key, dimension) }));
  const { sureProbability } = evidence.model;
  const corrections = known.filter(({ learned }) => 1 - learned.asPrintedProbability >= sureProbability);
  if (corrections.length === 0) return { chart, known, corrections, ranges: [] };
  const list: CorrectedRange[] = [];
  const correct = <T extends { readonly name: string; readonly ranges: SizeRanges }>(
    sized: T,
    part: CorrectedRange["part"],
  ): T => {
    const ranges: { [D in ChartDimension]?: SizeRange } = { ...sized.ranges };
    for (const { dimension, learned } of corrections) {
      const range = sized.ranges[dimension];
      if (range === undefined) continue;
      const moved = moveRange(range.interval, learned);
      list.push({ part, size: sized.name, dimension, printed: range.interval, ...moved });
      ranges[dimension] = { ...range, interval: moved.corrected };
    }
    return { ...sized, ranges };
  };
  return {
    chart: {
      ...chart,
      sizes: chart.sizes.map((size) => correct(size, "pack")),
      belts: chart.belts.map((belt) => correct(belt, "belt")),
    },
    known,
    corrections,
    ranges: list,
  };
}

function moveRange(
  printed: SizeRange["interval"],
  learned: LearnedChart,
): Pick<CorrectedRange, "corrected" | "fromSdMm" | "toSdMm"> {
  const { from, to } = printed;
  const move = expectedMove(learned);
  const half = Number.isFinite(from) && Number.isFinite(to) ? (to - from) / 2 : 0;
  const wider = half * (move.widthFactor - 1);
  const corrected = interval(from + move.offsetMm - wider, to + move.offsetMm + wider, {
    fromClosed: printed.fromClosed,
    toClosed: printed.toClosed,
  });
  const sd = (end: number, towards: 1 | -1): number => {
    if (!Number.isFinite(end)) return 0;
    const together = 2 * towards * half * move.covarianceMm;
    return Math.sqrt(Math.max(0, move.offsetSdMm ** 2 + (half * move.widthSd) ** 2 + together));
  };
  return { corrected, fromSdMm: sd(from, -1), toSdMm: sd(to, 1) };
}
