import { parseChart, type SizeChart } from "@tapewise/charts";
import type { Interval } from "@tapewise/intervals";
import type { StatedError } from "@tapewise/measurement";
import { type LengthReading, parseLength } from "@tapewise/units";

/** Standard deviations, in mm, of the error that all readings share and of one reading about it. */
export interface ErrorSetting {
  readonly name: string;
  readonly biasMm: number;
  readonly noiseMm: number;
}

/** A step that readings are rounded to, and how the mark with a number is written. */
export interface RoundingSetting {
  readonly name: string;
  readonly stepMm: number;
  readonly write: (mark: number) => string;
}

/** A chart of torso lengths. */
export interface ChartSetting {
  readonly name: string;
  readonly hasOverlap: boolean;
  readonly chart: SizeChart;
  readonly intervals: readonly Interval[];
}

/** How readings are made. */
export interface ReadingSetting {
  readonly error: ErrorSetting;
  readonly rounding: RoundingSetting;
  readonly count: number;
}

/** One cell of the study. */
export interface Cell {
  readonly error: string;
  readonly rounding: string;
  readonly readings: number;
  readonly chart: string;
}

/** The errors studied: assumptions, from a careful helper to a hasty look in the mirror. */
export const errors: readonly ErrorSetting[] = [
  { name: "3/5", biasMm: 3, noiseMm: 5 },
  { name: "6/8", biasMm: 6, noiseMm: 8 },
  { name: "10/12", biasMm: 10, noiseMm: 12 },
];

/** The marks of tapes: half centimetres, quarter inches, half inches. */
const roundings: readonly RoundingSetting[] = [
  { name: "5mm", stepMm: 5, write: (mark) => `${mark * 5} mm` },
  { name: "1/4in", stepMm: 6.35, write: (mark) => `${mark / 4} in` },
  { name: "1/2in", stepMm: 12.7, write: (mark) => `${mark / 2} in` },
];

/** How often a person reads. */
const counts: readonly number[] = [1, 2, 3, 4, 5];

/** Invented charts of usual widths. Each leaves some of the people without a size. */
export const charts: readonly ChartSetting[] = [
  chartOf("overlap-1cm", true, "S,36-41\nM,40-45\nL,44-49"),
  chartOf("overlap-2cm", true, "XS,37-42\nS,40-45\nM,43-48\nL,46-51"),
  chartOf("touching", false, "S,36-41\nM,41-46\nL,46-51"),
  chartOf("wide", true, "S/M,36-44\nL/XL,42-50"),
  chartOf("nominal", false, "S,39\nM,43\nL,47"),
];

function chartOf(name: string, hasOverlap: boolean, lines: string): ChartSetting {
  const chart = parseChart(`size,torso-length (cm)\n${lines}\n`, { chart: name });
  const intervals = chart.sizes.map((size) => {
    const range = size.ranges["torso-length"];
    if (range === undefined) throw new Error(`${name}: size ${size.name} states no torso length`);
    return range.interval;
  });
  return { name, hasOverlap, chart, intervals };
}

/** An error setting as the library takes it. */
export function statedError(error: ErrorSetting, rounding: RoundingSetting): StatedError {
  return { biasMm: error.biasMm, repeatMm: error.noiseMm, resolutionMm: rounding.stepMm };
}

/** The reading at a mark, through the library's own parser; each is parsed once. */
export function readingAt(rounding: RoundingSetting): (mark: number) => LengthReading {
  const known = new Map<number, LengthReading>();
  return (mark) => {
    const made = known.get(mark) ?? parseLength(rounding.write(mark));
    known.set(mark, made);
    return made;
  };
}

/** Every way of reading, in a fixed order. */
export function readingSettings(): readonly ReadingSetting[] {
  return errors.flatMap((error) =>
    roundings.flatMap((rounding) => counts.map((count) => ({ error, rounding, count }))),
  );
}

/** Whether a cell is asked for: `error=6/8,chart=wide,chart=nominal`; a key that is left out lets all through. */
export function cellFilter(text: string): (cell: Cell) => boolean {
  const wanted = new Map<string, Set<string>>();
  for (const part of text === "" ? [] : text.split(",")) {
    const [key = "", value = ""] = part.split("=");
    if (!valuesOf(key).includes(value)) throw new Error(`--cells: "${part}" is no cell of the study`);
    wanted.set(key, (wanted.get(key) ?? new Set()).add(value));
  }
  return (cell) =>
    [...wanted].every(([key, values]) =>
      Object.entries(cell).some(([name, value]) => name === key && values.has(String(value))),
    );
}

function valuesOf(key: string): readonly string[] {
  if (key === "error") return errors.map(({ name }) => name);
  if (key === "rounding") return roundings.map(({ name }) => name);
  if (key === "readings") return counts.map(String);
  return key === "chart" ? charts.map(({ name }) => name) : [];
}
