import type { Issue } from "@tapewise/outcome";
import { asWritten, type Row, readTable, type Separator } from "@tapewise/tables";
import type { LongRow } from "./long-cells.ts";
import type { Header } from "./long-columns.ts";
import type { StudyReport } from "./study-report.ts";

/** A table's line of headers and the rows below it. */
export interface StudyTable {
  readonly headers: readonly Header[];
  readonly rows: readonly LongRow[];
}

/**
 * The headers and rows of delimited text. A line that begins with `#` is a remark above the headers, and below
 * them where nothing else stands in it; subjects may be called `#1`.
 */
export function tableRows(
  text: string,
  separator: Separator | undefined,
  report: StudyReport,
  issues: Issue[],
): StudyTable | undefined {
  const table = readTable(text, { separator });
  const remarks = new Set(table.rows.filter(({ kind }) => kind === "remark").map(({ line }) => line));
  const { rows, quoteFaults } = asWritten(readTable(text, { separator: table.separator, remarks: false }));
  const lines = rows.filter((row) => row.kind === "cells");
  const from = lines.findIndex(({ line }) => !remarks.has(line));
  const [header, ...below] = lines.slice(Math.max(from, 0)).filter((row) => !isRemark(row, remarks));
  for (const fault of quoteFaults) {
    issues.push(report("study-quote", { received: fault.written, at: fault }));
  }
  if (from === -1 || header === undefined) return undefined;
  const headers = header.cells.map((cell) => ({ text: cell.text, at: cell }));
  const widest = headers.findLastIndex(({ text }) => text.trim() !== "") + 1;
  const study = below.map(({ line, cells }, index): LongRow => {
    const path = ["rows", index];
    cells.forEach((cell, position) => {
      if (position < widest || cell.text.trim() === "") return;
      const details = { path: [...path, position], received: cell.text.trim(), facts: { columns: widest } };
      issues.push(report("study-cell-beyond", { ...details, at: cell }));
    });
    const shown = cells.map((cell) => ({ text: cell.text, at: cell }));
    return { path, cells: shown, at: { line, column: 1 } };
  });
  return { headers: headers.slice(0, widest), rows: study };
}

function isRemark(row: Extract<Row, { kind: "cells" }>, remarks: ReadonlySet<number>): boolean {
  return remarks.has(row.line) && row.cells.slice(1).every((cell) => cell.text.trim() === "");
}
