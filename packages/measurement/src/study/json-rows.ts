import { type DimensionId, safeParseDimension } from "@tapewise/landmarks";
import { type Issue, relocateIssue } from "@tapewise/outcome";
import { type LengthUnit, safeParseLengthUnit } from "@tapewise/units";
import type { LongRow } from "./long-cells.ts";
import type { Header } from "./long-columns.ts";
import type { JsonEntry, JsonNode } from "./read-json.ts";
import type { StudyReport } from "./study-report.ts";

/** The readings of a JSON study as rows of the long layout. */
export interface JsonRows {
  readonly headers: readonly Header[];
  readonly rows: readonly LongRow[];
  readonly unit?: LengthUnit;
  readonly dimension?: DimensionId;
}

/**
 * Lays a JSON study out in rows: a list of objects, or an object with such a list as `readings` and, if it
 * likes, a `dimension` and a `unit` for all of them.
 */
export function jsonRows(node: JsonNode, report: StudyReport, issues: Issue[]): JsonRows | undefined {
  if (node.kind === "list") return rowsOf(node.items, [], report, issues);
  if (node.kind !== "object") {
    issues.push(report("study-json-shape", { received: node.text, at: node.place }));
    return undefined;
  }
  const about = new Map<string, JsonEntry>();
  for (const entry of withoutRepeats(node.entries, [], report, issues)) {
    if (["readings", "dimension", "unit"].includes(entry.key)) about.set(entry.key, entry);
    else
      issues.push(report("study-column-unused", { path: [entry.key], received: entry.key, at: entry.place }));
  }
  const readings = about.get("readings")?.value;
  if (readings?.kind !== "list") {
    issues.push(report("study-json-shape", { received: {}, at: readings?.place ?? node.place }));
    return undefined;
  }
  const dimension = stated(about.get("dimension"), safeParseDimension, issues);
  const unit = stated(about.get("unit"), safeParseLengthUnit, issues);
  return {
    ...rowsOf(readings.items, ["readings"], report, issues),
    ...(dimension === undefined ? {} : { dimension }),
    ...(unit === undefined ? {} : { unit }),
  };
}

function stated<T>(
  entry: JsonEntry | undefined,
  parse: (text: string) => { readonly ok: boolean; readonly value?: T; readonly issues: readonly Issue[] },
  issues: Issue[],
): T | undefined {
  if (entry === undefined) return undefined;
  const outcome = parse(textOf(entry.value));
  issues.push(...outcome.issues.map((issue) => relocateIssue(issue, [entry.key], entry.value.place)));
  return outcome.ok ? outcome.value : undefined;
}

function rowsOf(
  items: readonly JsonNode[],
  path: readonly string[],
  report: StudyReport,
  issues: Issue[],
): JsonRows {
  const positions = new Map<string, number>();
  const headers: Header[] = [];
  const rows: LongRow[] = [];
  items.forEach((item, index) => {
    const here = [...path, index];
    if (item.kind !== "object") {
      const received = item.kind === "list" ? item.items : item.text;
      issues.push(report("study-json-row", { path: here, received, at: item.place }));
      return;
    }
    const cells: (Header | undefined)[] = [];
    for (const { key, place, value } of withoutRepeats(item.entries, here, report, issues)) {
      const position = positions.get(key) ?? headers.length;
      if (position === headers.length) {
        positions.set(key, position);
        headers.push({ text: key, at: place });
      }
      cells[position] = { text: textOf(value), at: value.place };
    }
    rows.push({ path: here, cells, at: item.place });
  });
  return { headers, rows };
}

/** The properties of an object; of a repeated key the first counts, and the others are reported. */
function withoutRepeats(
  entries: readonly JsonEntry[],
  path: readonly (string | number)[],
  report: StudyReport,
  issues: Issue[],
): readonly JsonEntry[] {
  const seen = new Set<string>();
  return entries.filter(({ key, place, value }) => {
    if (!seen.has(key)) {
      seen.add(key);
      return true;
    }
    issues.push(report("study-key-repeated", { path: [...path, key], received: textOf(value), at: place }));
    return false;
  });
}

/** A scalar as it was written; `null` is nothing. What is no scalar says so. */
function textOf(node: JsonNode): string {
  if (node.kind === "object") return "{…}";
  if (node.kind === "list") return "[…]";
  return node.kind === "word" && node.text === "null" ? "" : node.text;
}
