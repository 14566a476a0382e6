import type { DimensionId } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";
import { LONE_MEASURER, MOST_REPEATS } from "./data.ts";
import { type LongRow, readRepeat } from "./long-cells.ts";
import { longColumn } from "./long-column.ts";
import type { Header } from "./long-columns.ts";
import { agreeOnDimension } from "./study-dimension.ts";
import type { StudyOptions } from "./study-options.ts";
import type { StudyReport } from "./study-report.ts";
import { type WideColumn, wideColumn } from "./wide-column.ts";
import type { WrittenCell } from "./written-cell.ts";

/** The readings of the wide layout as they are written, and the dimension where the headers name one. */
export interface WideCells {
  readonly cells: readonly WrittenCell[];
  readonly dimension?: DimensionId;
}

/** The columns of the wide layout that tell of whom a row is, and by whom or which time. */
interface RowNames {
  readonly subject: number;
  readonly measurer: number;
  readonly repeat: number;
}

/**
 * Reads the wide layout: a row for each subject, a column for each reading. Between it and the long one are
 * tables with a column of repeats and one for each measurer, or a column of measurers and one for each repeat.
 */
export function wideCells(
  headers: readonly Header[],
  rows: readonly LongRow[],
  options: StudyOptions,
  report: StudyReport,
  issues: Issue[],
): WideCells | undefined {
  const roles = headers.map((header) => longColumn(header.text)?.role);
  const names = {
    subject: Math.max(roles.indexOf("subject"), 0),
    measurer: roles.indexOf("measurer"),
    repeat: roles.indexOf("repeat"),
  };
  let dimension: DimensionId | undefined = options.dimension;
  const columns: ReadingColumn[] = [];
  for (const [position, header] of headers.entries()) {
    const received = header.text.trim();
    if (Object.values(names).includes(position) || received === "") continue;
    const column = wideColumn(received);
    const badRepeat = column?.repeat !== undefined && !(column.repeat >= 1 && column.repeat <= MOST_REPEATS);
    if (column === undefined || badRepeat) {
      const facts = { limit: MOST_REPEATS };
      issues.push(
        report("study-column-unread", { path: ["columns", position], received, facts, at: header.at }),
      );
      continue;
    }
    const agreed = agreeOnDimension(column, dimension, header, report, issues);
    if (agreed === "disagree") return undefined;
    dimension = agreed;
    columns.push({ ...column, position, header: received });
  }
  const cells = rows.flatMap((row) => {
    const named = nameRow(row, headers, names, report, issues);
    return named === undefined ? [] : columns.map((column) => cellOf(row, column, named, options));
  });
  return { cells, ...(dimension === undefined ? {} : { dimension }) };
}

interface ReadingColumn extends WideColumn {
  readonly position: number;
  readonly header: string;
}

interface NamedRow {
  readonly subject: string;
  readonly measurer?: string;
  readonly repeat?: number;
}

function nameRow(
  row: LongRow,
  headers: readonly Header[],
  names: RowNames,
  report: StudyReport,
  issues: Issue[],
): NamedRow | undefined {
  const textAt = (position: number): string => row.cells[position]?.text.trim() ?? "";
  const complain = (code: Parameters<StudyReport>[0], position: number): undefined => {
    const column = headers[position]?.text.trim() ?? "";
    const facts = { column, limit: MOST_REPEATS };
    const at = row.cells[position]?.at ?? row.at;
    issues.push(report(code, { path: [...row.path, column], received: textAt(position), facts, at }));
  };
  const subject = textAt(names.subject);
  if (subject === "") return complain("study-subject-blank", names.subject);
  const measurer = textAt(names.measurer);
  if (names.measurer !== -1 && measurer === "") return complain("study-measurer-blank", names.measurer);
  const repeat = readRepeat(textAt(names.repeat));
  if (names.repeat !== -1 && repeat === undefined) return complain("study-repeat-unreadable", names.repeat);
  return {
    subject,
    ...(measurer === "" ? {} : { measurer }),
    ...(repeat === undefined ? {} : { repeat }),
  };
}

function cellOf(row: LongRow, column: ReadingColumn, named: NamedRow, options: StudyOptions): WrittenCell {
  const cell = row.cells[column.position];
  const unit = column.unit ?? options.unit;
  const at = cell?.at ?? row.at;
  const repeat = column.repeat ?? named.repeat;
  return {
    subject: named.subject,
    measurer: column.measurer ?? named.measurer ?? options.measurer ?? LONE_MEASURER,
    text: cell?.text.trim() ?? "",
    column: column.header,
    path: [...row.path, column.header],
    ...(repeat === undefined ? {} : { repeat }),
    ...(unit === undefined ? {} : { unit }),
    ...(at === undefined ? {} : { at }),
  };
}
