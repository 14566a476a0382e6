import { equals, type Interval } from "@tapewise/intervals";
import { type LengthReading, safeParseLength } from "@tapewise/units";
import type { BeltData, ChartData, RangeData, RangeEndsData, RangesData, SizeData } from "./chart-data.ts";
import { coveredSizes } from "./covered-sizes.ts";
import { inferNominalIntervals } from "./infer-nominal-intervals.ts";
import {
  type ChartDimension,
  chartDimensions,
  type Size,
  type SizeChart,
  type SizeRange,
  type SizeRanges,
} from "./size-chart.ts";
import type { Statement } from "./statement.ts";
import { statementOf } from "./statement-of.ts";

/**
 * The JSON form of a chart: what `JSON.stringify` takes, {@link safeChartFromData} reads and the schema
 * describes. Read back, it gives the same names, intervals and nominal lengths.
 *
 * Lengths are written as the chart stated them, where that still says what the interval is, else in
 * millimetres. Where the rule of {@link inferNominalIntervals} would not give the intervals of nominal
 * lengths again, their ends are written out beside them. Of further statements of a range one is kept. A
 * lower end at or below zero is left out, for no length lies below it.
 *
 * @example
 * ```ts
 * import { chartToData, parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso (cm),torso (in)\nS,38-43,15-17\nM,46,18", { chart: "Crew pack 40" });
 * chartToData(chart).sizes[0]; // => { size: "S", "torso-length": { from: "38 cm", to: "43 cm", also: { from: "15 in", to: "17 in" } } }
 * chartToData(chart).sizes[1]; // => { size: "M", "torso-length": { nominal: "46 cm", also: { nominal: "18 in" } } }
 * ```
 */
export function chartToData(chart: SizeChart): ChartData {
  const { sizes, belts, swappable, ...about } = chart;
  const spelt = dimensionsToSpellOut(sizes);
  const speltBelts = dimensionsToSpellOut(belts);
  return {
    ...about,
    ...(swappable.length === 0 ? {} : { swappable }),
    sizes: sizes.map((size) => sizeData(size, spelt)),
    ...(belts.length === 0
      ? {}
      : {
          belts: belts.map(
            ({ name, ranges }): BeltData => ({ belt: name, ...rangesData(ranges, speltBelts) }),
          ),
        }),
  };
}

function sizeData({ name, covers, ranges, ...rest }: Size, spelt: ReadonlySet<ChartDimension>): SizeData {
  const usual = coveredSizes(name);
  const isUsual =
    usual.length === covers.length && usual.every((each, position) => each === covers[position]);
  return { size: name, ...(isUsual ? {} : { covers }), ...rangesData(ranges, spelt), ...rest };
}

/** The dimensions whose inferred intervals the rule would not give again. */
function dimensionsToSpellOut(
  sizes: readonly { readonly ranges: SizeRanges }[],
): ReadonlySet<ChartDimension> {
  return new Set(
    chartDimensions.filter((dimension) => {
      const all = sizes.map((size) => size.ranges[dimension]).filter((range) => range !== undefined);
      const nominal = all.filter((range) => range.nominalMm !== undefined);
      const stated = all.filter((range) => range.nominalMm === undefined).map((range) => range.interval);
      const inferred = inferNominalIntervals(
        nominal.map((range) => range.nominalMm ?? 0),
        stated,
      );
      return nominal.some((range, position) => {
        const again = inferred[position];
        return again === undefined || !equals(again, range.interval);
      });
    }),
  );
}

function rangesData(ranges: SizeRanges, spelt: ReadonlySet<ChartDimension>): RangesData {
  const data: Partial<Record<ChartDimension, RangeData>> = {};
  for (const dimension of chartDimensions) {
    const range = ranges[dimension];
    if (range !== undefined) data[dimension] = rangeData(range, spelt.has(dimension));
  }
  return data;
}

function rangeData(range: SizeRange, spellOut: boolean): RangeData {
  const [first, second] = range.stated.map(statementOf);
  const also = second === undefined ? {} : { also: endsOf(second) };
  if (first !== undefined && !spellOut && saysTheSame(first, range)) return { ...endsOf(first), ...also };
  const { interval, nominalMm } = range;
  const nominal =
    nominalMm === undefined
      ? {}
      : { nominal: first?.nominal?.mm === nominalMm ? textOf(first.nominal) : inMillimetres(nominalMm) };
  return { ...nominal, ...(nominalMm === undefined || spellOut ? boundsOf(interval) : {}), ...also };
}

function saysTheSame(statement: Statement, { interval, nominalMm }: SizeRange): boolean {
  if (nominalMm !== undefined) return statement.nominal?.mm === nominalMm;
  return (
    statement.nominal === undefined &&
    (statement.from?.mm ?? Number.NEGATIVE_INFINITY) === interval.from &&
    (statement.to?.mm ?? Number.POSITIVE_INFINITY) === interval.to
  );
}

function endsOf({ from, to, nominal }: Statement): RangeEndsData {
  return {
    ...(from === undefined ? {} : { from: textOf(from) }),
    ...(to === undefined ? {} : { to: textOf(to) }),
    ...(nominal === undefined ? {} : { nominal: textOf(nominal) }),
  };
}

/** A reading as text that carries its own unit. */
function textOf({ text, unit }: LengthReading): string {
  return safeParseLength(text).ok ? text.trim() : `${text.trim()} ${unit}`;
}

function boundsOf({ from, to }: Interval): RangeEndsData {
  return {
    ...(from > 0 ? { from: inMillimetres(from) } : {}),
    ...(Number.isFinite(to) ? { to: inMillimetres(to) } : {}),
  };
}

/** Three decimals could be thousands to a reader of either custom; a fourth one settles it. */
function inMillimetres(mm: number): string {
  return `${String(mm).replace(/^(\d+\.\d{3})$/, "$10")} mm`;
}
