import type { Cell, DelimitedText } from "./table-rows.ts";

/**
 * The same text with every cell whose quotation marks do not fit as it was written, marks and all, so that
 * nobody takes `"82"5` for 825.
 *
 * @example
 * ```ts
 * import { asWritten, readDelimitedText } from "@tapewise/tables";
 * const [row] = asWritten(readDelimitedText('"82"5,"91"', ",")).rows;
 * row?.kind === "cells" && row.cells.map((cell) => cell.text); // => ['"82"5', "91"]
 * ```
 */
export function asWritten<T extends DelimitedText>(table: T): T {
  if (table.quoteFaults.length === 0) return table;
  const written = new Map(table.quoteFaults.map((fault) => [`${fault.line}:${fault.column}`, fault.written]));
  const cellOf = (cell: Cell): Cell => {
    const text = written.get(`${cell.line}:${cell.column}`);
    return text === undefined ? cell : { ...cell, text };
  };
  const rows = table.rows.map((row) =>
    row.kind === "cells" ? { ...row, cells: row.cells.map(cellOf) } : row,
  );
  return { ...table, rows };
}
