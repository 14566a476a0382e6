import type { DimensionId } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";
import { jsonRows } from "./json-rows.ts";
import { longCells } from "./long-cells.ts";
import { longColumn } from "./long-column.ts";
import { longColumns } from "./long-columns.ts";
import type { JsonNode } from "./read-json.ts";
import type { StudyOptions } from "./study-options.ts";
import type { StudyReport } from "./study-report.ts";
import { tableRows } from "./table-rows.ts";
import { wideCells } from "./wide-cells.ts";
import type { WrittenCell } from "./written-cell.ts";

/** The cells of a study as they are written, with the dimension where it is known. */
export interface StudyCells {
  readonly cells: readonly WrittenCell[];
  readonly dimension?: DimensionId;
}

/** The cells of delimited text, in the layout that the caller names or the headers show. */
export function studyCellsOfTable(
  text: string,
  options: StudyOptions,
  report: StudyReport,
  issues: Issue[],
): StudyCells | undefined {
  const table = tableRows(text, options.separator, report, issues);
  if (table === undefined) return undefined;
  const { headers, rows } = table;
  if (options.layout === "wide" || (options.layout === undefined && !isLong(headers))) {
    return wideCells(headers, rows, options, report, issues);
  }
  const columns = longColumns(headers, options.dimension, report, issues);
  if (columns === undefined) return undefined;
  const cells = longCells(headers, rows, columns, options, report, issues);
  return { cells, ...(columns.dimension === undefined ? {} : { dimension: columns.dimension }) };
}

/** The cells of a JSON study. */
export function studyCellsOfJson(
  node: JsonNode,
  options: StudyOptions,
  report: StudyReport,
  issues: Issue[],
): StudyCells | undefined {
  const read = jsonRows(node, report, issues);
  if (read === undefined) return undefined;
  const columns = longColumns(read.headers, options.dimension ?? read.dimension, report, issues);
  if (columns === undefined) return undefined;
  const unit = read.unit ?? options.unit;
  const cells = longCells(read.headers, read.rows, columns, { ...options, unit }, report, issues);
  return { cells, ...(columns.dimension === undefined ? {} : { dimension: columns.dimension }) };
}

/** Whether the headers name values, and who took them or which time it was. */
function isLong(headers: readonly { readonly text: string }[]): boolean {
  const roles = new Set(headers.map(({ text }) => longColumn(text)?.role));
  return roles.has("value") && (roles.has("measurer") || roles.has("repeat"));
}
