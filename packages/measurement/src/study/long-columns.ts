import { type DimensionId, dimensionName } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";
import type { LengthUnit } from "@tapewise/units";
import type { ColumnRole } from "./data.ts";
import { type LongColumn, longColumn } from "./long-column.ts";
import { agreeOnDimension } from "./study-dimension.ts";
import type { StudyReport } from "./study-report.ts";

/** A header, or a key of JSON rows. */
export interface Header {
  readonly text: string;
  readonly at?: { readonly line: number; readonly column: number };
}

/** Where the long layout keeps what. */
export interface LongColumns {
  readonly subject: number;
  readonly measurer?: number;
  readonly repeat?: number;
  readonly value: number;
  readonly unitColumn?: number;
  readonly unit?: LengthUnit;
  readonly dimension?: DimensionId;
}

/**
 * Finds the columns of the long layout. What is not used is reported; nothing is returned, and an issue says
 * why, where the subjects or the values cannot be told.
 */
export function longColumns(
  headers: readonly Header[],
  wanted: DimensionId | undefined,
  report: StudyReport,
  issues: Issue[],
): LongColumns | undefined {
  const places = new Map<ColumnRole, number>();
  const values: { readonly position: number; readonly column: LongColumn }[] = [];
  headers.forEach((header, position) => {
    const path = ["columns", position];
    const received = header.text.trim();
    if (received === "") return;
    const column = longColumn(header.text);
    if (column === undefined) {
      issues.push(report("study-column-unused", { path, received, at: header.at }));
    } else if (column.role === "value") {
      values.push({ position, column });
    } else if (places.has(column.role)) {
      const facts = { role: column.role };
      issues.push(report("study-column-repeated", { path, received, facts, at: header.at }));
    } else places.set(column.role, position);
  });
  const at = headers[0]?.at;
  const named = headers.map((header) => header.text.trim()).filter((text) => text !== "");
  const facts = { columns: named.slice(0, 20).join(", ") };
  const subject = places.get("subject");
  if (subject === undefined) {
    issues.push(
      report("study-column-missing", { received: named[0], facts: { ...facts, role: "subject" }, at }),
    );
  }
  const chosen = chooseValue(values, wanted, headers, report, issues);
  if (values.length === 0) {
    issues.push(
      report("study-column-missing", { received: named[0], facts: { ...facts, role: "value" }, at }),
    );
  }
  if (subject === undefined || chosen === undefined) return undefined;
  const header = headers[chosen.position];
  const agreed = agreeOnDimension(chosen.column, wanted, header, report, issues);
  if (agreed === "disagree") return undefined;
  const measurer = places.get("measurer");
  const repeat = places.get("repeat");
  const unitColumn = places.get("unit");
  return {
    subject,
    value: chosen.position,
    ...(measurer === undefined ? {} : { measurer }),
    ...(repeat === undefined ? {} : { repeat }),
    ...(unitColumn === undefined ? {} : { unitColumn }),
    ...(chosen.column.unit === undefined ? {} : { unit: chosen.column.unit }),
    ...(agreed === undefined ? {} : { dimension: agreed }),
  };
}

interface ValueColumn {
  readonly position: number;
  readonly column: LongColumn;
}

/** The one column of values: the caller's dimension where there are several; the others are reported. */
function chooseValue(
  values: readonly ValueColumn[],
  wanted: DimensionId | undefined,
  headers: readonly Header[],
  report: StudyReport,
  issues: Issue[],
): ValueColumn | undefined {
  if (values.length < 2) return values[0];
  const fitting = values.filter(({ column }) => wanted !== undefined && column.dimension === wanted);
  const [chosen] = fitting;
  if (chosen !== undefined && fitting.length === 1) {
    for (const { position } of values.filter((value) => value !== chosen)) {
      const header = headers[position];
      const details = { path: ["columns", position], received: header?.text.trim(), at: header?.at };
      issues.push(report("study-column-unused", details));
    }
    return chosen;
  }
  const second = headers[values[1]?.position ?? 0];
  const columns = values.map(({ position }) => headers[position]?.text.trim()).join(", ");
  const dimension = wanted === undefined ? "the dimension" : dimensionName(wanted);
  const facts = { columns, dimension };
  issues.push(report("study-values-several", { received: second?.text.trim(), facts, at: second?.at }));
  return undefined;
}
