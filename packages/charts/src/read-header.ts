import { type LengthUnit, safeParseLengthUnit } from "@tapewise/units";
import { type ChartDimensionMatch, findChartDimension } from "./find-chart-dimension.ts";
import { type Quantity, quantityUnit } from "./read-quantity-cell.ts";
import type { ChartDimension } from "./size-chart.ts";
import { tidyCell } from "./split-cell.ts";
import type { StatedUnits } from "./statement.ts";

/** What a column holds, after its header. */
export type Column =
  | { readonly kind: "range"; readonly dimension: ChartDimension; readonly units: StatedUnits }
  | { readonly kind: "quantity"; readonly quantity: Quantity; readonly unit: number | undefined }
  | { readonly kind: "harness" }
  | { readonly kind: "name" }
  | Extract<ChartDimensionMatch, { readonly kind: "ambiguous" }>
  | { readonly kind: "wrong-unit"; readonly of: ChartDimension | Quantity }
  | { readonly kind: "unknown"; readonly suggestions: readonly string[] };

const NAME_WORDS = /^(?:(?:pack )?sizes?(?: name)?|name)$/;
const CAPACITY_WORDS = /^(?:(?:pack )?(?:capacity|volume)|lit(?:er|re)s)$/;
const MASS_WORDS = /^(?:pack )?(?:weight|mass)$/;
const HARNESS_WORDS = /^(?:harness|back system)(?: type)?$/;

/**
 * Reads a header: a dimension's id or the words that people use for it, and its unit in brackets, after
 * a comma or as the last word. A bracket that holds no unit is a part of the name: `Hip (widest)`.
 */
export function readHeader(text: string): Column {
  const header = tidyCell(text).replaceAll(" | ", " ");
  const { ways, last } = readings(header);
  const suggestions = new Set<string>();
  let wrongUnit: Column | undefined;
  for (const [label, unit] of ways) {
    const column = columnOf(label, unit);
    if (column.kind === "wrong-unit") wrongUnit ??= column;
    else if (column.kind !== "unknown") return column;
    else for (const suggestion of column.suggestions) suggestions.add(suggestion);
  }
  if (wrongUnit !== undefined) return wrongUnit;
  const column = last === undefined ? undefined : columnOf(last, "");
  if (column !== undefined && column.kind !== "unknown") return column;
  return { kind: "unknown", suggestions: [...suggestions].slice(0, 3) };
}

interface Readings {
  /** The ways to part a header into a label and a unit, the likelier ones first. */
  readonly ways: readonly (readonly [label: string, unit: string])[];
  /** The header without the remark in brackets at its end. */
  readonly last: string | undefined;
}

function readings(header: string): Readings {
  const ways: (readonly [string, string])[] = [];
  const bracket = /^(.*?)\s*[([]([^()[\]]*)[)\]]$/.exec(header);
  const comma = /^(.*?)\s*,\s*([^,]*)$/.exec(header);
  const last = /^(.*?)[\s_-]+(?:in[\s_-]+)?([^\s_-]+)$/i.exec(header);
  const lastTwo = /^(.*?)[\s_-]+(cu\.? ?in\.?|cubic inches)$/i.exec(header);
  for (const way of [bracket, comma, lastTwo, last]) {
    if (way?.[1] !== undefined && way[2] !== undefined && way[2].trim() !== "")
      ways.push([way[1], way[2].trim()]);
  }
  ways.push([header, ""]);
  return { ways, last: bracket?.[1] };
}

function columnOf(label: string, unit: string): Column {
  const plain = label
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();
  if (unit === "" && NAME_WORDS.test(plain)) return { kind: "name" };
  if (unit === "" && HARNESS_WORDS.test(plain)) return { kind: "harness" };
  if (CAPACITY_WORDS.test(plain)) return quantityColumn("capacity", plain, unit);
  if (MASS_WORDS.test(plain)) return quantityColumn("mass", plain, unit);
  const found = findChartDimension(label);
  if (found.kind === "unknown") return found;
  const units = unit === "" ? [] : lengthUnits(unit);
  if (units === undefined) return { kind: "unknown", suggestions: [] };
  if (found.kind === "ambiguous") return found;
  const { dimension } = found;
  return units === "other" ? { kind: "wrong-unit", of: dimension } : { kind: "range", dimension, units };
}

function quantityColumn(quantity: Quantity, plain: string, unit: string): Column {
  if (unit !== "") {
    const size = quantityUnit(unit, quantity);
    return size === undefined
      ? { kind: "wrong-unit", of: quantity }
      : { kind: "quantity", quantity, unit: size };
  }
  // "Litres" is the dimension and the unit in one word.
  const size = quantityUnit(plain, quantity);
  return { kind: "quantity", quantity, unit: size };
}

/** The units that a header names: "cm", or "cm / in" for cells with both. "other" when it names something else. */
function lengthUnits(words: string): readonly LengthUnit[] | "other" | undefined {
  const parts = words.split(/\s*(?:[/&,|]|\bor\b|\band\b)\s*/i);
  if (parts.length > 2) return undefined;
  const units: LengthUnit[] = [];
  for (const part of parts) {
    const unit = safeParseLengthUnit(part);
    if (unit.ok) units.push(unit.value);
    else return unit.issues.some(({ code }) => OTHER_UNIT.has(code)) ? "other" : undefined;
  }
  return units;
}

const OTHER_UNIT: ReadonlySet<string> = new Set(["length-unit-wrong-kind", "length-unit-unread"]);
