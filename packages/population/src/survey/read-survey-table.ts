import { asWritten, type Cell, readTable, type Separator } from "@tapewise/tables";

/** The lines of a survey that can be trusted. */
export interface SurveyTable {
  /** Lines with at least one cell that is not empty. */
  readonly rows: readonly (readonly Cell[])[];
  /** Where a quotation mark opens a cell that never ends; its line and those below are left out. */
  readonly openQuote?: { readonly line: number; readonly column: number };
}

/** The lines of a survey. A line that begins with `#` is a person like any other: ids may. */
export function readSurveyTable(text: string, separator: Separator | undefined): SurveyTable {
  // What follows a closing mark belongs to no cell: the marks stay, so that it is not read as a value.
  const { rows, quoteFaults } = asWritten(readTable(text, { separator, remarks: false }));
  const openQuote = quoteFaults.find(({ kind }) => kind === "open");
  const end =
    openQuote === undefined ? rows.length : rows.findLastIndex(({ line }) => line <= openQuote.line);
  return {
    rows: rows.slice(0, end).flatMap((row) => (row.kind === "cells" ? [row.cells] : [])),
    ...(openQuote === undefined ? {} : { openQuote: { line: openQuote.line, column: openQuote.column } }),
  };
}
