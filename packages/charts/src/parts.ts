import type { Issue, IssuePath, Place } from "@tapewise/outcome";
import { chartIssue } from "./chart-issue.ts";
import { LONGEST_CELL, MOST_SIZES } from "./data.ts";
import { chartDimensions } from "./size-chart.ts";
import { receivedOf, type Source, type SourceEntry } from "./source.ts";
import { hintFor } from "./suggest-word.ts";

/** The properties of an object by their names: the first of each, and only known ones. */
export type Parts<Key extends string> = ReadonlyMap<Key, SourceEntry>;

/** A value on its way into a chart: where it sits, and where to report it. */
export interface Reading {
  readonly path: IssuePath;
  readonly issues: Issue[];
}

/** Takes an object apart. Unknown and repeated properties are reported and left out. */
export function partsOf<Key extends string>(
  source: Source,
  known: readonly Key[],
  what: string,
  { path, issues }: Reading,
): Parts<Key> | undefined {
  if (source.kind !== "object") {
    issues.push(wrongKind(source, what, `an object with ${known.slice(0, 3).join(", ")}`, path));
    return undefined;
  }
  const parts = new Map<Key, SourceEntry>();
  for (const entry of source.entries) {
    const key = known.find((candidate) => candidate === entry.key);
    const about = { path: [...path, entry.key], place: entry.place, received: receivedOf(entry.value) };
    if (key === undefined) {
      const facts = { what, key: shown(entry.key), hint: hintFor(entry.key, known), known: keyWords(known) };
      issues.push(chartIssue("chart-key-unknown", { ...about, facts }));
    } else if (parts.has(key)) {
      issues.push(chartIssue("chart-key-repeated", { ...about, facts: { key } }));
    } else parts.set(key, entry);
  }
  return parts;
}

/** A text of a part, without space at its ends; nothing, and an issue, when it is none, blank or too long. */
export function textOf(
  entry: SourceEntry | undefined,
  what: string,
  { path, issues }: Reading,
): string | undefined {
  if (entry === undefined) return undefined;
  const at = [...path, entry.key];
  if (entry.value.kind === "text") {
    return filledText(entry.value.value, what, { path: at, issues }, entry.value.place);
  }
  issues.push(wrongKind(entry.value, what, 'text in "quotation marks"', at));
  return undefined;
}

/** A text that says something; a blank one is an issue, for JSON has other ways to say nothing. */
export function filledText(
  text: string,
  what: string,
  { path, issues }: Reading,
  place: Place | undefined,
): string | undefined {
  if (isInvisible(text)) {
    issues.push(chartIssue("chart-text-blank", { path, place, received: text, facts: { what } }));
  }
  return shortText(text, what, { path, issues }, place);
}

/** A text without space at its ends; nothing when nothing of it shows, and with an issue when it is endless. */
export function shortText(
  text: string,
  what: string,
  { path, issues }: Reading,
  place: Place | undefined,
): string | undefined {
  if (text.length > LONGEST_CELL) {
    const facts = { what, characters: text.length, limit: LONGEST_CELL };
    issues.push(chartIssue("chart-text-too-long", { path, place, received: text, facts }));
    return undefined;
  }
  const trimmed = text.replace(/\s+/g, " ").trim();
  return isInvisible(trimmed) ? undefined : trimmed;
}

/** Whether nothing of a text shows: space, characters that Unicode has drawn as nothing, and the blank of Braille. */
function isInvisible(text: string): boolean {
  return !/[^\s\p{Default_Ignorable_Code_Point}\u2800]/u.test(text);
}

/** A finite number above zero of a part. */
export function quantityOf(
  entry: SourceEntry | undefined,
  what: string,
  { path, issues }: Reading,
): number | undefined {
  if (entry === undefined) return undefined;
  const { value } = entry;
  if (value.kind === "number" && value.value > 0 && Number.isFinite(value.value)) return value.value;
  const facts = { what, form: "a finite number above zero, without a unit" };
  const about = { path: [...path, entry.key], place: value.place, received: receivedOf(value), facts };
  issues.push(chartIssue("chart-quantity-unreadable", about));
  return undefined;
}

/** The items of a list of a part. */
export function itemsOf(
  entry: SourceEntry | undefined,
  what: string,
  { path, issues }: Reading,
): readonly Source[] {
  if (entry === undefined) return [];
  const { value } = entry;
  const at = [...path, entry.key];
  const length = value.kind === "other" && Array.isArray(value.value) ? value.value.length : 0;
  const items = value.kind === "list" ? value.items : [];
  if (Math.max(length, items.length) > MOST_SIZES) {
    const facts = { sizes: Math.max(length, items.length), limit: MOST_SIZES };
    issues.push(chartIssue("chart-too-many-sizes", { path: at, place: value.place, facts }));
    return [];
  }
  if (value.kind !== "list") issues.push(wrongKind(value, what, "a list", at));
  return items;
}

/** The issue about a value that is of another kind than its place asks for. */
export function wrongKind(source: Source, what: string, form: string, path: IssuePath): Issue {
  return chartIssue("chart-value-kind", {
    path,
    place: source.place,
    received: receivedOf(source),
    facts: { what, form },
  });
}

/** The names of the parts, with one dimension in place of all. */
function keyWords(known: readonly string[]): string {
  const isDimension = (key: string): boolean => chartDimensions.some((dimension) => dimension === key);
  const words = known.filter((key) => !isDimension(key));
  return [...words, ...(known.some(isDimension) ? ["a dimension such as torso-length"] : [])].join(", ");
}

function shown(key: string): string {
  return key.length > LONGEST_CELL ? `${key.slice(0, LONGEST_CELL)}…` : key;
}
