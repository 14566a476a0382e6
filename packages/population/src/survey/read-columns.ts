import { dimensionIds } from "@tapewise/landmarks";
import { InvalidArgumentError, type Issue } from "@tapewise/outcome";
import type { Cell } from "@tapewise/tables";
import { lengthUnits } from "@tapewise/units";
import type { Variable } from "../joint/joint-model.ts";
import { requireAbout } from "../joint/variable.ts";
import { requirePositive } from "../require-argument.ts";
import type { ReportSurvey } from "./report-survey.ts";
import type { LengthColumn, MassColumn, SurveyMapping } from "./survey.ts";

/** A reading of a variable: the places of its column, and of the one to be taken off. */
export interface SourceColumn {
  readonly at: number;
  readonly minusAt?: number;
  readonly from: LengthColumn | MassColumn;
}

/** Where everything stands. */
export interface Columns {
  readonly variables: readonly { readonly variable: Variable; readonly sources: readonly SourceColumn[] }[];
  readonly weightAt?: number;
  readonly idAt?: number;
  readonly issues: readonly Issue[];
  /** Whether the weights, which nobody can do without, are there if they were asked for. */
  readonly usable: boolean;
}

/** Finds the columns of a mapping in the line of column names. What is not there is reported and left out. */
export function readColumns(header: readonly Cell[], mapping: SurveyMapping, report: ReportSurvey): Columns {
  requireMapping(mapping);
  const names = header.map((cell) => cell.text.trim());
  const issues: Issue[] = [];
  const find = (column: string, variable: string): number | undefined => {
    const count = names.filter((name) => name === column).length;
    if (count === 1) return names.indexOf(column);
    const facts = { variable, count, columns: names.slice(0, 40).join(", ") };
    const code = count === 0 ? "survey-column-missing" : "survey-column-repeated";
    const at = count === 0 ? header[0] : header[names.indexOf(column)];
    issues.push(report(code, { path: [variable], received: column, facts }, at));
    return undefined;
  };
  const resolve = (variable: Variable, from: LengthColumn | MassColumn): SourceColumn | undefined => {
    const at = find(from.column, variable);
    const minus = "minus" in from ? from.minus : undefined;
    const minusAt = minus === undefined ? undefined : find(minus, variable);
    if (at === undefined || (minus !== undefined && minusAt === undefined)) return undefined;
    return { at, from, ...(minusAt === undefined ? {} : { minusAt }) };
  };
  const wanted: (readonly [Variable, readonly (LengthColumn | MassColumn)[]])[] = dimensionIds.flatMap(
    (id) => {
      const columns = mapping.dimensions[id];
      return columns === undefined ? [] : [[id, listOf(columns)] as const];
    },
  );
  if (mapping.mass !== undefined) wanted.push(["mass-kg", [mapping.mass]]);
  const variables = wanted.flatMap(([variable, columns]) => {
    const sources = columns.map((from) => resolve(variable, from));
    const complete = sources.filter((source) => source !== undefined);
    return complete.length === sources.length ? [{ variable, sources: complete }] : [];
  });
  const weightAt = mapping.weight === undefined ? undefined : find(mapping.weight, "weight");
  const idAt = mapping.id === undefined ? undefined : find(mapping.id, "id");
  return {
    variables,
    issues,
    usable: variables.length > 0 && (mapping.weight === undefined || weightAt !== undefined),
    ...(weightAt === undefined ? {} : { weightAt }),
    ...(idAt === undefined ? {} : { idAt }),
  };
}

function listOf(columns: LengthColumn | readonly LengthColumn[]): readonly LengthColumn[] {
  return "column" in columns ? [columns] : columns;
}

/** Refuses a mapping that is a programmer's slip: a dimension that does not exist, a unit that is none. */
function requireMapping(mapping: SurveyMapping): void {
  requireAbout(mapping.about);
  const known: readonly string[] = dimensionIds;
  for (const [id, columns] of Object.entries(mapping.dimensions)) {
    if (!known.includes(id)) throw new InvalidArgumentError("mapping.dimensions", id, "dimension ids");
    const list = columns === undefined ? [] : listOf(columns);
    if (columns !== undefined && list.length === 0) {
      throw new InvalidArgumentError(`mapping.dimensions["${id}"]`, list, "at least one column");
    }
    for (const { unit } of list) {
      if (lengthUnits.includes(unit)) continue;
      const argument = `the unit of ${id}`;
      throw new InvalidArgumentError(argument, unit, `one of ${lengthUnits.join(", ")}`);
    }
  }
  if (mapping.mass !== undefined)
    requirePositive("mapping.mass.kilogramsPerUnit", mapping.mass.kilogramsPerUnit);
}
