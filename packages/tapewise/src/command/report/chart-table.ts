import {
  type ChartDimension,
  type SizeChart,
  type SizeRange,
  type SizeRanges,
  speakDimension,
} from "@tapewise/charts";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { numberIn } from "./words.ts";

interface Sized {
  readonly name: string;
  readonly ranges: SizeRanges;
}

/** A chart as it was understood: a head and a table of its sizes, and of its hip belts. */
export function chartLines(chart: SizeChart, file: string, shown: "cm" | "in" | undefined): string[] {
  const unit = shown ?? unitOfChart(chart);
  const about = [
    ...(chart.maker === undefined ? [] : [`maker ${chart.maker}`]),
    ...(chart.product === undefined ? [] : [`product ${chart.product}`]),
    `cut ${chart.cut ?? "not stated"}`,
    `harness ${chart.harness ?? "not stated"}`,
    ...(chart.swappable.length === 0 ? [] : [`can be swapped: ${chart.swappable.join(", ")}`]),
  ];
  const extras: readonly Column[] = [
    {
      title: "capacity",
      cell: (size) => (size.capacityLitres === undefined ? "" : `${size.capacityLitres} L`),
    },
    {
      title: "mass",
      cell: (size) => (size.massGrams === undefined ? "" : `${Math.round(size.massGrams)} g`),
    },
    { title: "harness", cell: (size) => size.harness ?? "" },
  ];
  const used = extras.filter(({ cell }) => chart.sizes.some((size) => cell(size) !== ""));
  return [
    ...wrap(`${cleanWord(chart.chart)} (${file})`),
    ...wrap(`${about.join("; ")}. Lengths in ${unit}; * is inferred.`, { first: "  ", rest: "  " }),
    ...sizeTable("size", chart.sizes, unit, used),
    ...(chart.belts.length === 0 ? [] : ["", ...sizeTable("hip belt", chart.belts, unit, [])]),
    "",
  ];
}

interface Column {
  readonly title: string;
  readonly cell: (size: SizeChart["sizes"][number]) => string;
}

function sizeTable<T extends Sized>(
  title: string,
  sizes: readonly T[],
  unit: "cm" | "in",
  extras: readonly { readonly title: string; readonly cell: (size: T) => string }[],
): string[] {
  const dimensions = [...new Set(sizes.flatMap((size) => Object.keys(size.ranges)))] as ChartDimension[];
  return table(
    [title, ...dimensions.map(speakDimension), ...extras.map((extra) => extra.title)],
    sizes.map((size) => [
      shorten(cleanWord(size.name), 16),
      ...dimensions.map((dimension) => rangeText(size.ranges[dimension], unit)),
      ...extras.map((extra) => extra.cell(size)),
    ]),
    ["left", ...dimensions.map(() => "right" as const), ...extras.map(() => "right" as const)],
  );
}

function rangeText(range: SizeRange | undefined, unit: "cm" | "in"): string {
  if (range === undefined) return "-";
  const { from, to } = range.interval;
  const mark = range.basis === "nominal" ? "*" : "";
  if (!Number.isFinite(from) && !Number.isFinite(to)) return `any${mark}`;
  if (!Number.isFinite(from)) return `up to ${numberIn(to, unit)}${mark}`;
  if (!Number.isFinite(to)) return `from ${numberIn(from, unit)}${mark}`;
  return `${numberIn(from, unit)} to ${numberIn(to, unit)}${mark}`;
}

/** Inches when every cell was written in inches. */
function unitOfChart(chart: SizeChart): "cm" | "in" {
  const stated = [...chart.sizes, ...chart.belts].flatMap((size) =>
    Object.values(size.ranges).flatMap((range) => range.stated),
  );
  return stated.length > 0 && stated.every((text) => /(?:\bin\b|inch|["″”])/i.test(text)) ? "in" : "cm";
}
