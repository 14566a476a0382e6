import type { Cell, Row } from "@tapewise/tables";

/** A header line and the lines below it. */
export interface CsvTable {
  readonly header: readonly Cell[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A remark with the line that it stands in. */
export interface Remark {
  readonly text: string;
  readonly line: number;
}

/** The parts of a CSV chart. */
export interface CsvParts {
  readonly remarks: readonly Remark[];
  readonly sizes?: CsvTable;
  readonly belts?: CsvTable;
}

const BELT_HEADER = /^(?:hip[\s-]?)?belts?(?:[\s-]?sizes?)?$/i;

/**
 * Parts the lines of a file into remarks, the table of sizes and the table of hip belts. The second
 * table begins after a blank line, with a header whose first cell is `belt`; other blank lines mean nothing.
 */
export function csvTables(rows: readonly Row[]): CsvParts {
  const remarks: Remark[] = [];
  let sizes: { header: readonly Cell[]; rows: (readonly Cell[])[] } | undefined;
  let belts: { header: readonly Cell[]; rows: (readonly Cell[])[] } | undefined;
  let afterBlank = true;
  for (const row of rows) {
    if (row.kind === "remark") remarks.push(row);
    else if (row.kind === "cells") {
      const isBelts = afterBlank && belts === undefined && BELT_HEADER.test(row.cells[0]?.text.trim() ?? "");
      if (isBelts) belts = { header: row.cells, rows: [] };
      else if (belts !== undefined) belts.rows.push(row.cells);
      else if (sizes === undefined) sizes = { header: row.cells, rows: [] };
      else sizes.rows.push(row.cells);
    }
    afterBlank = row.kind === "blank";
  }
  return {
    remarks,
    ...(sizes === undefined ? {} : { sizes }),
    ...(belts === undefined ? {} : { belts }),
  };
}
