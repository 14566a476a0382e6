import { chartIssue } from "./chart-issue.ts";
import type { DraftRange, DraftSize } from "./draft.ts";
import {
  filledText,
  itemsOf,
  type Parts,
  partsOf,
  quantityOf,
  type Reading,
  textOf,
  wrongKind,
} from "./parts.ts";
import { readJsonRange } from "./read-json-range.ts";
import { readWord } from "./read-word.ts";
import { type ChartDimension, chartDimensions, harnessKinds } from "./size-chart.ts";
import type { Source } from "./source.ts";

const SIZE_KEYS = ["size", ...chartDimensions, "capacityLitres", "massGrams", "harness", "covers"] as const;
const BELT_KEYS = ["belt", ...chartDimensions] as const;

/** Reads one size of the JSON form; nothing when it has no name. */
export function readJsonSize(source: Source, reading: Reading): DraftSize | undefined {
  const parts = partsOf(source, SIZE_KEYS, "a size", reading);
  if (parts === undefined) return undefined;
  const name = textOf(parts.get("size"), "the name of a size", reading);
  const ranges = readRanges(parts, reading);
  const capacityLitres = quantityOf(parts.get("capacityLitres"), "a capacity in litres", reading);
  const massGrams = quantityOf(parts.get("massGrams"), "a mass in grams", reading);
  const harness = readWord(
    textOf(parts.get("harness"), "the harness", reading),
    harnessKinds,
    "the harness",
    { ...reading, path: [...reading.path, "harness"] },
    parts.get("harness")?.value.place,
  );
  const covers = readCovers(parts, reading);
  if (name === undefined) return unnamed(source, reading);
  return {
    name,
    ranges,
    ...(capacityLitres === undefined ? {} : { capacityLitres }),
    ...(massGrams === undefined ? {} : { massGrams }),
    ...(harness === undefined ? {} : { harness }),
    ...(covers.length === 0 ? {} : { covers }),
    path: reading.path,
    ...(source.place === undefined ? {} : { place: source.place }),
  };
}

/** Reads one hip belt of the JSON form; nothing when it has no name. */
export function readJsonBelt(source: Source, reading: Reading): DraftSize | undefined {
  const parts = partsOf(source, BELT_KEYS, "a hip belt", reading);
  if (parts === undefined) return undefined;
  const name = textOf(parts.get("belt"), "the name of a hip belt", reading);
  const ranges = readRanges(parts, reading);
  if (name === undefined) return unnamed(source, reading);
  return { name, ranges, path: reading.path, ...(source.place === undefined ? {} : { place: source.place }) };
}

function readRanges(
  parts: Parts<(typeof SIZE_KEYS)[number] | (typeof BELT_KEYS)[number]>,
  { path, issues }: Reading,
): ReadonlyMap<ChartDimension, DraftRange> {
  const ranges = new Map<ChartDimension, DraftRange>();
  for (const dimension of chartDimensions) {
    const value = parts.get(dimension)?.value;
    if (value === undefined) continue;
    const [first, ...others] = readJsonRange(value, { path: [...path, dimension], issues });
    if (first === undefined) continue;
    ranges.set(dimension, {
      statements: [first, ...others],
      ...(value.place === undefined ? {} : { place: value.place }),
    });
  }
  return ranges;
}

function readCovers(parts: Parts<(typeof SIZE_KEYS)[number]>, reading: Reading): readonly string[] {
  return itemsOf(parts.get("covers"), "the list of covered sizes", reading).flatMap((item, position) => {
    const path = [...reading.path, "covers", position];
    if (item.kind === "text") {
      return filledText(item.value, "a covered size", { ...reading, path }, item.place) ?? [];
    }
    reading.issues.push(wrongKind(item, "a covered size", 'text in "quotation marks"', path));
    return [];
  });
}

function unnamed(source: Source, { path, issues }: Reading): undefined {
  issues.push(chartIssue("chart-size-unnamed", { path, place: source.place }));
  return undefined;
}
