import { type DimensionId, dimensionName, plausibleLimits } from "@tapewise/landmarks";
import { type Issue, relocateIssue } from "@tapewise/outcome";
import { placeOf } from "@tapewise/tables";
import { safeParseLength } from "@tapewise/units";
import { MISSING_MARKS } from "./data.ts";
import type { MissingCell, SetAsideReading, StudyCell, StudyReading } from "./study.ts";
import type { StudyOptions } from "./study-options.ts";
import type { StudyReport } from "./study-report.ts";
import type { WrittenCell } from "./written-cell.ts";

/** What became of the cells. */
export interface Gathered {
  readonly readings: readonly StudyReading[];
  readonly missing: readonly MissingCell[];
  readonly setAside: readonly SetAsideReading[];
}

/** Reads every written cell and puts it where it belongs; whatever is not a plain reading is reported. */
export function gatherStudy(
  cells: readonly WrittenCell[],
  dimension: DimensionId | undefined,
  options: StudyOptions,
  report: StudyReport,
  issues: Issue[],
): Gathered {
  const readings: StudyReading[] = [];
  const missing: MissingCell[] = [];
  const setAside: SetAsideReading[] = [];
  const marks = (options.missingMarks ?? MISSING_MARKS).map((mark) => mark.toLowerCase());
  const limits = dimension === undefined ? undefined : plausibleLimits(dimension, options.people ?? "child");
  const first = new Map<string, WrittenCell>();
  const next = new Map<string, number>();
  const unitless: { readonly cell: WrittenCell; readonly issues: readonly Issue[] }[] = [];
  const withUnit = new Set<string>();

  for (const cell of cells) {
    const { subject, measurer, text, path, at } = cell;
    const who = JSON.stringify([subject, measurer]);
    const repeat = cell.repeat ?? (next.get(who) ?? 0) + 1;
    next.set(who, Math.max(repeat, next.get(who) ?? 0));
    const place = at && placeOf(at.line, at.column, options.file);
    const here: StudyCell = { subject, measurer, repeat };
    const where = place === undefined ? {} : { place };
    const key = JSON.stringify([subject, measurer, repeat]);
    const before = first.get(key);
    if (before === undefined) first.set(key, cell);
    const isMissing = text === "" || marks.includes(text.toLowerCase());
    if (isMissing) {
      if (before === undefined) missing.push({ ...here, because: "left-empty", text, ...where });
      continue;
    }
    const outcome = safeParseLength(text, { unit: cell.unit, decimalMark: options.decimalMark });
    if (!outcome.ok) {
      const found = outcome.issues.map((issue) => relocateIssue(issue, path, place));
      if (found.some(({ code }) => code === "length-no-unit")) unitless.push({ cell, issues: found });
      else issues.push(...found);
      if (before === undefined) missing.push({ ...here, because: "unreadable", text, ...where });
      continue;
    }
    withUnit.add(cell.column);
    const { mm, unit, stepMm } = outcome.value;
    const reading: StudyReading = { ...here, mm, text, unit, stepMm, path, ...where };
    if (before !== undefined) {
      const facts = {
        subject,
        measurer,
        repeat,
        first: before.text || "an empty cell",
        line: before.at?.line ?? 0,
      };
      issues.push(report("study-cell-repeated", { path, received: text, facts, at }));
      setAside.push({ ...reading, code: "study-cell-repeated" });
      continue;
    }
    if (limits !== undefined && dimension !== undefined && (mm < limits.from || mm > limits.to)) {
      const facts = {
        subject,
        measurer,
        repeat,
        dimension: dimensionName(dimension),
        lowestMm: limits.from,
        highestMm: limits.to,
      };
      const keep = options.keepImpossible === true;
      const code = keep ? "study-reading-kept" : "study-reading-impossible";
      issues.push(report(code, { path, received: text, facts, at }));
      if (!keep) {
        setAside.push({ ...reading, code });
        continue;
      }
    }
    readings.push(reading);
  }
  issues.push(...reportUnitless(unitless, withUnit, report));
  return { readings, missing, setAside };
}

/** One issue for a column in which no cell has a unit; one each where only some lack it. */
function reportUnitless(
  unitless: readonly { readonly cell: WrittenCell; readonly issues: readonly Issue[] }[],
  withUnit: ReadonlySet<string>,
  report: StudyReport,
): readonly Issue[] {
  const columns = new Map<string, number>();
  for (const { cell } of unitless) columns.set(cell.column, (columns.get(cell.column) ?? 0) + 1);
  return unitless.flatMap(({ cell, issues }) => {
    const count = columns.get(cell.column);
    if (withUnit.has(cell.column)) return issues;
    if (count === undefined) return [];
    columns.delete(cell.column);
    const facts = { column: cell.column, count, number: cell.text };
    return [report("study-unit-missing", { path: cell.path, received: cell.text, facts, at: cell.at })];
  });
}
