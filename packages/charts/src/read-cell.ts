import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import { type LengthReading, type LengthUnit, safeParseLength } from "@tapewise/units";
import { cellIssues } from "./cell-issues.ts";
import { LONGEST_CELL } from "./data.ts";
import { isNotStated, splitCell, splitStatements, tidyCell } from "./split-cell.ts";
import type { StatedUnits, Statement } from "./statement.ts";

/**
 * Reads a cell: a range, a nominal length or an open end, in one unit or two. No statement means that
 * the cell says nothing. What cannot be read is reported, and the other statement is kept.
 */
export function readCell(text: string, units: StatedUnits): Outcome<readonly Statement[]> {
  if (text.length > LONGEST_CELL) {
    const facts = { what: "a cell", characters: text.length, limit: LONGEST_CELL };
    return failure([createIssue(cellIssues, "chart-text-too-long", { received: text, facts })]);
  }
  const tidied = tidyCell(text);
  if (isNotStated(tidied)) return success([]);
  const parts = splitStatements(tidied);
  if (parts.length > 2)
    return failure([createIssue(cellIssues, "chart-cell-unreadable", { received: tidied })]);
  const statements: Statement[] = [];
  const issues: Issue[] = [];
  parts.forEach((part, position) => {
    const outcome = readStatement(part, units[position] ?? units[0], units);
    // A second statement is there for the sake of its other unit.
    const isOtherUnit = (issue: Issue): boolean => position > 0 && issue.code === "chart-cell-unit-differs";
    issues.push(...outcome.issues.filter((issue) => !isOtherUnit(issue)));
    if (outcome.ok) statements.push(outcome.value);
  });
  return success(statements, issues);
}

function readStatement(text: string, unit: LengthUnit | undefined, units: StatedUnits): Outcome<Statement> {
  const parts = splitCell(text);
  if (parts.kind === "unreadable") {
    return failure([createIssue(cellIssues, "chart-cell-unreadable", { received: text })]);
  }
  if (parts.kind === "half-range") {
    const facts = { length: parts.length };
    return failure([createIssue(cellIssues, "chart-cell-half-range", { received: text, facts })]);
  }
  if (parts.kind === "range") return readRange(text, parts.from, parts.to, unit, units);
  const length = readLength(parts.length, unit);
  if (!length.outcome.ok) return length.outcome;
  const reading = length.outcome.value;
  const stated = length.ownUnit ? text : `${text} ${reading.unit}`;
  return success({ [parts.kind]: reading, stated }, issuesOfUnit(text, length, unit, units));
}

function readRange(
  text: string,
  fromText: string,
  toText: string,
  unit: LengthUnit | undefined,
  units: StatedUnits,
): Outcome<Statement> {
  const alone = { from: readLength(fromText, undefined), to: readLength(toText, undefined) };
  // "38-43 cm": the unit at one end is meant for both.
  const from = alone.from.ownUnit ? alone.from : readLength(fromText, unitOf(alone.to) ?? unit);
  const to = alone.to.ownUnit ? alone.to : readLength(toText, unitOf(alone.from) ?? unit);
  if (!from.outcome.ok) return failure(withIssues(from.outcome.issues, to.outcome));
  if (!to.outcome.ok) return to.outcome;
  const stated = from.ownUnit || to.ownUnit ? text : `${text} ${to.outcome.value.unit}`;
  if (from.outcome.value.mm > to.outcome.value.mm) {
    return failure([createIssue(cellIssues, "chart-range-reversed", { received: stated })]);
  }
  const written = to.ownUnit ? to : from;
  return success(
    { from: from.outcome.value, to: to.outcome.value, stated },
    issuesOfUnit(text, written, unit, units),
  );
}

interface LengthInCell {
  readonly outcome: Outcome<LengthReading>;
  /** Whether the text names its unit itself. */
  readonly ownUnit: boolean;
}

function readLength(text: string, unit: LengthUnit | undefined): LengthInCell {
  const alone = safeParseLength(text);
  const noUnit = !alone.ok && alone.issues.every((issue) => issue.code === "length-no-unit");
  if (!noUnit || unit === undefined) return { outcome: alone, ownUnit: !noUnit };
  return { outcome: safeParseLength(text, { unit }), ownUnit: false };
}

function unitOf(length: LengthInCell): LengthUnit | undefined {
  return length.outcome.ok ? length.outcome.value.unit : undefined;
}

/** A cell may say more than its header, never something else. Feet belong to inches. */
function issuesOfUnit(
  text: string,
  length: LengthInCell,
  unit: LengthUnit | undefined,
  units: StatedUnits,
): readonly Issue[] {
  const cellUnit = length.ownUnit ? unitOf(length) : undefined;
  if (cellUnit === undefined || unit === undefined || units.includes(cellUnit)) return [];
  if (cellUnit === "ft" && units.includes("in")) return [];
  const facts = { cellUnit, columnUnit: unit };
  return [createIssue(cellIssues, "chart-cell-unit-differs", { received: text, facts })];
}

function withIssues(
  issues: readonly [Issue, ...Issue[]],
  other: Outcome<unknown>,
): readonly [Issue, ...Issue[]] {
  return other.ok ? issues : [...issues, ...other.issues];
}
