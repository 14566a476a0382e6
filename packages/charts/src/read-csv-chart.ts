import type { Issue } from "@tapewise/outcome";
import { type Cell, placeOf, readTable } from "@tapewise/tables";
import { chartIssue } from "./chart-issue.ts";
import { type CsvTable, csvTables } from "./csv-tables.ts";
import { LONGEST_CELL, MOST_COLUMNS, MOST_SIZES } from "./data.ts";
import type { DraftChart, DraftSize } from "./draft.ts";
import { keepFirst } from "./keep-first.ts";
import { readCsvColumns } from "./read-csv-columns.ts";
import { readCsvRow } from "./read-csv-row.ts";
import { readHeader } from "./read-header.ts";
import { readRemarks } from "./read-remarks.ts";
import { withoutUnitlessColumns } from "./unitless-columns.ts";

/** Reads the CSV form of a chart. What cannot be read is reported and left out. */
export function readCsvChart(text: string, file: string | undefined): DraftChart {
  const issues: Issue[] = [];
  const { rows, quoteFaults } = readTable(text);
  for (const { line, column } of quoteFaults) {
    issues.push(chartIssue("chart-csv-quote", { place: placeOf(line, column, file) }));
  }
  const { remarks, sizes, belts } = csvTables(rows);
  const about = readRemarks(remarks, issues, file);
  return {
    about,
    sizes: sizes === undefined ? [] : readSizes(sizes, "sizes", issues, file),
    belts: belts === undefined ? [] : readSizes(belts, "belts", issues, file),
    issues,
    place: placeOf(1, 1, file),
  };
}

function readSizes(
  table: CsvTable,
  kind: "sizes" | "belts",
  issues: Issue[],
  file: string | undefined,
): readonly DraftSize[] {
  const { header, rows } = table;
  const [first] = header;
  const place = placeOf(first?.line ?? 1, first?.column ?? 1, file);
  if (rows.length > MOST_SIZES) {
    const facts = { sizes: rows.length, limit: MOST_SIZES };
    issues.push(chartIssue("chart-too-many-sizes", { path: [kind], place, facts }));
    return [];
  }
  if (isTransposed(table)) {
    issues.push(chartIssue("chart-csv-transposed", { path: [kind], place, received: first?.text }));
    return [];
  }
  const headers = withoutEmptyColumns(table);
  const read = readCsvColumns(headers, kind === "belts", issues, file);
  if (read === undefined) return [];
  const columns = withoutUnitlessColumns(read, table, issues, file);
  const width = headers.length;
  const sizes = rows.map((cells, position) =>
    readCsvRow(cells, { columns, width, path: [kind, position], issues, file }),
  );
  return keepFirst(sizes, issues);
}

/** The headers up to the last one that says something: spreadsheets end lines with empty cells. */
function withoutEmptyColumns({ header }: CsvTable): readonly Cell[] {
  const last = header.findLastIndex((cell) => cell.text.trim() !== "");
  return header.slice(0, last + 1);
}

/** Whether no header names a dimension, while a cell of the first column does. */
function isTransposed({ header, rows }: CsvTable): boolean {
  const inHeader = header.slice(0, MOST_COLUMNS).some(namesDimension);
  if (inHeader) return false;
  return rows.slice(0, MOST_COLUMNS).some(([first]) => first !== undefined && namesDimension(first));
}

function namesDimension({ text }: Cell): boolean {
  return text.length <= LONGEST_CELL && readHeader(text).kind === "range";
}
