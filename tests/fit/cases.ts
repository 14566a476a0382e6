import type { BeltSize, ChartDimension, Size, SizeChart, SizeRange, SizeRanges } from "@tapewise/charts";
import type { Reason, Recommendation, RecommendOptions } from "@tapewise/fit";
import { type Person, recommend } from "@tapewise/fit";
import { type Interval, interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import {
  type Conditions,
  type Estimate,
  type Prior,
  parseEstimate,
  type StatedError,
} from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { millimetres, parseLength } from "@tapewise/units";

/** A range as a chart prints it: two ends in mm, or an interval. */
export type Ends = Interval | readonly [from: number, to: number];

function intervalOf(ends: Ends): Interval {
  return "from" in ends ? ends : interval(ends[0], ends[1]);
}

function rangeOf(ends: Ends): SizeRange {
  return { interval: intervalOf(ends), basis: "range", stated: [] };
}

/** A single length of which the interval was inferred. */
export function nominal(lengthMm: number, from: number, to: number): SizeRange {
  return { interval: interval(from, to), basis: "nominal", nominalMm: millimetres(lengthMm), stated: [] };
}

export type Row = Readonly<Partial<Record<ChartDimension, Ends | SizeRange>>>;

function rangesOf(row: Row): SizeRanges {
  const entries = Object.entries(row).map(([name, cell]) => [name, "basis" in cell ? cell : rangeOf(cell)]);
  return Object.fromEntries(entries);
}

export function sizeOf(name: string, row: Row, more: Partial<Omit<Size, "name" | "ranges">> = {}): Size {
  return { name, covers: [name], ranges: rangesOf(row), ...more };
}

export function beltOf(name: string, row: Row): BeltSize {
  return { name, ranges: rangesOf(row) };
}

export function chartOf(sizes: readonly Size[], more: Partial<Omit<SizeChart, "sizes">> = {}): SizeChart {
  return { chart: "Crew pack", swappable: [], belts: [], sizes, ...more };
}

/** A chart of torso lengths alone. */
export function torsoChart(
  sizes: Readonly<Record<string, Ends>>,
  more: Partial<Omit<SizeChart, "sizes">> = {},
): SizeChart {
  const list = Object.entries(sizes).map(([name, ends]) => sizeOf(name, { "torso-length": ends }));
  return chartOf(list, more);
}

/** Readings as text; their error is the one of this file unless it is given. */
export function estimateOf(
  dimension: DimensionId,
  readings: readonly string[],
  error: StatedError = { biasMm: 6, repeatMm: 8, resolutionMm: 5 },
): Estimate {
  return parseEstimate({ dimension, readings: readings.map((text) => parseLength(text)), error });
}

/** Readings whose error is that of the table of defaults. */
export function usualEstimate(
  dimension: DimensionId,
  readings: readonly string[],
  conditions: Conditions = { measuredBy: "self", tool: "tape" },
): Estimate {
  return parseEstimate({ dimension, readings: readings.map((text) => parseLength(text)), conditions });
}

/** An estimate with just this mean and this uncertainty, which no further reading of its kind improves. */
export function sureEstimate(
  dimension: DimensionId,
  mm: number,
  uncertaintyMm: number,
  degreesOfFreedom: number = Number.POSITIVE_INFINITY,
): Estimate {
  const error = { biasMm: uncertaintyMm, repeatMm: 0, resolutionMm: 0 };
  const estimate = parseEstimate({ dimension, readings: [parseLength("1 m")], error });
  return { ...estimate, mm: millimetres(mm), uncertaintyMm, degreesOfFreedom };
}

/** A prior of independent dimensions. */
export function priorOf(
  dimensions: Readonly<Partial<Record<DimensionId, readonly [meanMm: number, sdMm: number]>>>,
  label = "people like this one",
): Prior {
  const names = Object.keys(dimensions) as DimensionId[];
  const figures = names.map((name) => dimensions[name] ?? [0, 1]);
  return {
    label,
    source: "made up for a test",
    caveat: "none",
    dimensions: names,
    meanMm: figures.map(([mean]) => mean),
    covarianceMm2: figures.map(([, sd], i) => figures.map((_, j) => (i === j ? sd * sd : 0))),
  };
}

/** The recommendation for somebody, who must get one. */
export function answer(
  person: Person,
  chart: SizeChart,
  options: RecommendOptions = { unit: "cm" },
): Recommendation {
  return unwrap(recommend(person, chart, options));
}

export function codes(reasons: readonly Reason[]): readonly string[] {
  return reasons.map((reason) => reason.code);
}

/** The reason or step with this code, which must be there. */
export function find(reasons: readonly Reason[], code: string): Reason {
  const found = reasons.find((reason) => reason.code === code);
  if (found === undefined) throw new Error(`no ${code} among ${codes(reasons).join(", ")}`);
  return found;
}
