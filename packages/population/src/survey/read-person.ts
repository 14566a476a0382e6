import { plausibleLimits } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";
import type { Cell } from "@tapewise/tables";
import type { Variable } from "../joint/joint-model.ts";
import { readAmount, readNumber } from "./read-amount.ts";
import type { Columns, SourceColumn } from "./read-columns.ts";
import type { ReportSurvey } from "./report-survey.ts";
import type { SurveyOptions, SurveyPerson } from "./survey.ts";

const MISSING_MARKS: readonly string[] = ["", "NA", "N/A", "-", "."];

/** A person, or nobody, with what is to be said of the line. */
export interface PersonRead {
  readonly person?: SurveyPerson;
  readonly issues: readonly Issue[];
  /** Implausible values: reported one by one, or all together where most of a column are. */
  readonly implausible: readonly { readonly variable: Variable; readonly issue: Issue }[];
}

/** Reads one line. Only a weight that cannot be read costs the person; a value that cannot is missing. */
export function readPerson(
  row: readonly Cell[],
  columns: Columns,
  options: SurveyOptions,
  report: ReportSurvey,
): PersonRead {
  const issues: Issue[] = [];
  const implausible: { variable: Variable; issue: Issue }[] = [];
  const marks = options.missingMarks ?? MISSING_MARKS;
  const textAt = (at: number): string => row[at]?.text.trim() ?? "";
  const isMissing = (at: number): boolean => textAt(at) === "" || marks.includes(textAt(at));

  const amount = (
    variable: Variable,
    at: number,
    from: SourceColumn["from"],
    column: string,
  ): number | undefined => {
    if (isMissing(at)) {
      issues.push(
        report("survey-cell-missing", { path: [variable], received: textAt(at), facts: { column } }, row[at]),
      );
      return undefined;
    }
    const read = readAmount(textAt(at), from, options.decimalMark);
    if (typeof read === "number") return read;
    const facts = { column, reason: read.reason, unit: "unit" in from ? from.unit : "the column's unit" };
    issues.push(report("survey-cell-unreadable", { path: [variable], received: textAt(at), facts }, row[at]));
    return undefined;
  };
  const reading = (variable: Variable, { at, minusAt, from }: SourceColumn): number | undefined => {
    const whole = amount(variable, at, from, from.column);
    if (minusAt === undefined || !("minus" in from) || from.minus === undefined) return whole;
    const part = amount(variable, minusAt, from, from.minus);
    if (whole === undefined || part === undefined) return undefined;
    if (whole > part) return whole - part;
    const facts = { column: from.column, minus: from.minus };
    issues.push(
      report("survey-difference-not-positive", { path: [variable], received: whole - part, facts }, row[at]),
    );
    return undefined;
  };

  const readings: Partial<Record<Variable, readonly number[]>> = {};
  const values: Partial<Record<Variable, number>> = {};
  for (const { variable, sources } of columns.variables) {
    const found = sources.map((source) => reading(variable, source)).filter((value) => value !== undefined);
    if (found.length === 0) continue;
    const mean = found.reduce((sum, value) => sum + value, 0) / found.length;
    readings[variable] = found;
    values[variable] = mean;
    const doubt = variable === "mass-kg" ? undefined : limitsMissed(variable, mean);
    if (doubt === undefined) continue;
    const details = { path: [variable], received: mean, facts: { variable, ...doubt } };
    implausible.push({
      variable,
      issue: report("survey-value-implausible", details, row[sources[0]?.at ?? 0]),
    });
  }

  const { weightAt, idAt } = columns;
  const weight = weightAt === undefined ? 1 : readNumber(textAt(weightAt), options.decimalMark);
  if (!(typeof weight === "number" && weight > 0)) {
    const received = weightAt === undefined ? "" : textAt(weightAt);
    const cell = row[weightAt ?? 0];
    return {
      issues: [...issues, report("survey-weight-unreadable", { path: ["weight"], received }, cell)],
      implausible,
    };
  }
  const id = idAt === undefined ? {} : { id: textAt(idAt) };
  const person = { line: row[0]?.line ?? 0, ...id, weight, values, readings };
  return { person, issues, implausible };
}

function limitsMissed(
  variable: Exclude<Variable, "mass-kg">,
  value: number,
): { readonly lowestMm: number; readonly highestMm: number } | undefined {
  const { from, to } = plausibleLimits(variable, "adult");
  return value >= from && value <= to ? undefined : { lowestMm: from, highestMm: to };
}
