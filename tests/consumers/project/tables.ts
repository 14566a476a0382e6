// What somebody writes who reads tables that are no charts.
import { readTable, type Table } from "@tapewise/tables";

const table: Table = readTable("pack;lent to\nDoily 45;Ann\n");
const [, row] = table.rows;

export const answer = {
  separator: table.separator,
  cell: row?.kind === "cells" ? row.cells[1] : undefined,
};
