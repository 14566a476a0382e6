import { type Issue, type IssuePath, relocateIssue } from "@tapewise/outcome";
import { placeOf } from "@tapewise/tables";
import { safeParseLengthUnit } from "@tapewise/units";
import { LONE_MEASURER, MOST_REPEATS } from "./data.ts";
import type { Header, LongColumns } from "./long-columns.ts";
import type { studyIssues } from "./study-issues.ts";
import type { StudyOptions } from "./study-options.ts";
import type { StudyReport } from "./study-report.ts";
import type { WrittenCell } from "./written-cell.ts";

/** A row of the long layout: a cell for each header, or nothing where the row has none. */
export interface LongRow {
  readonly path: IssuePath;
  readonly cells: readonly (Header | undefined)[];
  /** Where the row begins. */
  readonly at?: { readonly line: number; readonly column: number };
}

/** The readings of the long layout as they are written. A row that says not of whom it is is reported. */
export function longCells(
  headers: readonly Header[],
  rows: readonly LongRow[],
  columns: LongColumns,
  options: StudyOptions,
  report: StudyReport,
  issues: Issue[],
): readonly WrittenCell[] {
  const { subject, measurer, repeat, value, unitColumn } = columns;
  const nameOf = (position: number): string => headers[position]?.text.trim() ?? "";
  return rows.flatMap((row): readonly WrittenCell[] => {
    const textAt = (position: number): string => row.cells[position]?.text.trim() ?? "";
    const complain = (code: keyof typeof studyIssues, position: number): readonly WrittenCell[] => {
      const details = { path: [...row.path, nameOf(position)], received: textAt(position) };
      const facts = { limit: MOST_REPEATS, column: nameOf(position) };
      issues.push(report(code, { ...details, facts, at: row.cells[position]?.at ?? row.at }));
      return [];
    };
    if (textAt(subject) === "") return complain("study-subject-blank", subject);
    if (measurer !== undefined && textAt(measurer) === "") return complain("study-measurer-blank", measurer);
    const count = repeat === undefined ? undefined : readRepeat(textAt(repeat));
    if (repeat !== undefined && count === undefined) return complain("study-repeat-unreadable", repeat);
    const word = unitColumn === undefined ? "" : textAt(unitColumn);
    const read = word === "" ? undefined : safeParseLengthUnit(word);
    if (read !== undefined && unitColumn !== undefined) {
      const at = row.cells[unitColumn]?.at;
      const place = at && placeOf(at.line, at.column, options.file);
      issues.push(
        ...read.issues.map((issue) => relocateIssue(issue, [...row.path, nameOf(unitColumn)], place)),
      );
    }
    // A unit that cannot be read must not fall back on another one.
    const unit = read === undefined ? (columns.unit ?? options.unit) : read.ok ? read.value : undefined;
    const cell = row.cells[value];
    const at = cell?.at ?? row.at;
    return [
      {
        subject: textAt(subject),
        measurer: measurer === undefined ? (options.measurer ?? LONE_MEASURER) : textAt(measurer),
        text: cell?.text.trim() ?? "",
        column: nameOf(value),
        path: [...row.path, nameOf(value)],
        ...(count === undefined ? {} : { repeat: count }),
        ...(unit === undefined ? {} : { unit }),
        ...(at === undefined ? {} : { at }),
      },
    ];
  });
}

/** A repeat's number, alone or behind a word: `2`, `r2`, `Reading 2`. */
export function readRepeat(text: string): number | undefined {
  const digits = /^(?:\p{L}+[\s.]*|#)?0*([1-9]\d{0,3})$/u.exec(text)?.[1];
  const count = digits === undefined ? undefined : Number(digits);
  return count !== undefined && count <= MOST_REPEATS ? count : undefined;
}
