import { type Issue, relocateIssue } from "@tapewise/outcome";
import { placeOf } from "@tapewise/tables";
import { chartIssue } from "./chart-issue.ts";
import type { CsvTable } from "./csv-tables.ts";
import { LONGEST_CELL } from "./data.ts";
import { readCell } from "./read-cell.ts";
import type { CsvColumns, UsedColumn } from "./read-csv-columns.ts";

/**
 * Leaves out columns whose header ends in a bracket that is no unit, such as `torso-length (furlong)`,
 * when none of their cells names a unit either: one issue about the header, and not one for every cell.
 */
export function withoutUnitlessColumns(
  columns: CsvColumns,
  table: CsvTable,
  issues: Issue[],
  file: string | undefined,
): CsvColumns {
  const used = columns.used.filter((column) => {
    const header = table.header[column.position];
    const bracket = /[([]([^()[\]]+)[)\]]\s*$/.exec(header?.text.slice(0, LONGEST_CELL) ?? "")?.[1];
    if (header === undefined || bracket === undefined || !lacksUnits(column, table)) return true;
    const facts = { unit: bracket.trim(), units: "mm, cm, m, in or ft" };
    const issue = chartIssue("chart-column-unit-unread", { received: header.text.trim(), facts });
    const place = placeOf(header.line, header.column, file);
    issues.push(relocateIssue(issue, ["columns", column.position], place));
    return false;
  });
  return { ...columns, used };
}

/** Whether cells of the column state lengths, and none of them says in which unit. */
function lacksUnits(column: UsedColumn, { rows }: CsvTable): boolean {
  if (column.kind !== "range" || column.units.length > 0) return false;
  const cells = rows.map((row) => readCell(row[column.position]?.text ?? "", []));
  const states = cells.some(({ issues }) => issues.some(({ code }) => code === "length-no-unit"));
  return states && !cells.some((cell) => cell.ok && cell.value.length > 0);
}
