import { closestWord, didYouMean, type Issue, relocateIssue } from "@tapewise/outcome";
import { type Cell, placeOf } from "@tapewise/tables";
import { chartIssue } from "./chart-issue.ts";
import { LONGEST_CELL, MOST_COLUMNS } from "./data.ts";
import { type Column, readHeader } from "./read-header.ts";
import { quantityUnits } from "./read-quantity-cell.ts";
import type { StatedUnits } from "./statement.ts";

const OTHER_COLUMNS = ["size", "capacity", "volume", "mass", "weight", "harness"];

/** A column that is read, by its position in the lines. */
export type UsedColumn = Extract<Column, { kind: "range" | "quantity" | "harness" }> & {
  readonly position: number;
};

/** The columns of a table: where the names stand, and what else is read. */
export interface CsvColumns {
  readonly names: number;
  readonly used: readonly UsedColumn[];
}

/**
 * Reads the headers of a table. Columns that are unknown, ambiguous or stated twice are reported and left
 * out. Nothing, and an issue, when the names of the sizes cannot be found.
 */
export function readCsvColumns(
  header: readonly Cell[],
  isBeltTable: boolean,
  issues: Issue[],
  file: string | undefined,
): CsvColumns | undefined {
  const columns = header.slice(0, MOST_COLUMNS).map(({ text }) => readHeader(text.slice(0, LONGEST_CELL)));
  const tooMany = header[MOST_COLUMNS];
  if (tooMany !== undefined) {
    const facts = { columns: header.length, limit: MOST_COLUMNS };
    const place = placeOf(tooMany.line, tooMany.column, file);
    issues.push(chartIssue("chart-too-many-columns", { path: ["columns", MOST_COLUMNS], place, facts }));
  }
  const names = isBeltTable ? 0 : nameColumn(columns);
  const [first] = header;
  if (names === undefined) {
    const place = first === undefined ? undefined : placeOf(first.line, first.column, file);
    issues.push(
      chartIssue("chart-csv-size-column-missing", { path: ["columns", 0], place, received: first?.text }),
    );
    return undefined;
  }
  const used: UsedColumn[] = [];
  columns.forEach((column, position) => {
    const cell = header[position];
    if (position === names || cell === undefined) return;
    const found = faultOf(column, cell, used);
    const place = placeOf(cell.line, cell.column, file);
    if (found !== undefined) issues.push(relocateIssue(found, ["columns", position], place));
    if (found !== undefined && found.severity === "error") return;
    if (column.kind === "range" || column.kind === "quantity" || column.kind === "harness") {
      used.push({ ...column, position });
    }
  });
  return { names, used };
}

/** The first column, unless it is known to be something else and another one is called size. */
function nameColumn(columns: readonly Column[]): number | undefined {
  const kind = columns[0]?.kind;
  if (kind === "unknown" || kind === "name" || kind === "ambiguous") return 0;
  const named = columns.findIndex((column) => column.kind === "name");
  return named === -1 ? undefined : named;
}

/** What is wrong with a column, or doubtful. */
function faultOf(column: Column, cell: Cell, used: readonly UsedColumn[]): Issue | undefined {
  const received = cell.text.trim();
  switch (column.kind) {
    case "name":
      return chartIssue("chart-column-repeated", {
        received,
        facts: { dimension: "the size", unit: "words" },
      });
    case "unknown": {
      const near = closestWord(received.replace(/\s*[([].*$/, ""), OTHER_COLUMNS);
      const hint = didYouMean(near === undefined ? column.suggestions : [near]);
      return chartIssue("chart-column-unknown", { received, facts: { hint } });
    }
    case "ambiguous": {
      const facts = { candidates: column.candidates.join(", "), why: column.explanation };
      return chartIssue("chart-column-ambiguous", { received, facts });
    }
    case "wrong-unit": {
      const units =
        column.of === "capacity" || column.of === "mass" ? quantityUnits[column.of] : "mm, cm, m, in or ft";
      return chartIssue("chart-column-unit-unknown", { received, facts: { dimension: column.of, units } });
    }
    case "range": {
      const { dimension, units } = column;
      const repeated = used.some(
        (other) => other.kind === "range" && other.dimension === dimension && share(other.units, units),
      );
      if (repeated) {
        const facts = { dimension, unit: units.join(" and ") || "no unit" };
        return chartIssue("chart-column-repeated", { received, facts });
      }
      const isFirst = !used.some((other) => other.kind === "range" && other.dimension === dimension);
      return dimension === "unstated-hip-girth" && isFirst
        ? chartIssue("chart-hip-unstated", { received })
        : undefined;
    }
    case "quantity":
    case "harness": {
      const dimension = column.kind === "quantity" ? column.quantity : "harness";
      const repeated = used.some(
        (other) => (other.kind === "quantity" ? other.quantity : other.kind) === dimension,
      );
      return repeated
        ? chartIssue("chart-column-repeated", { received, facts: { dimension, unit: "any unit" } })
        : undefined;
    }
  }
}

/** Columns without a unit may state the same one, as may those that share one. */
function share(a: StatedUnits, b: StatedUnits): boolean {
  return a.length === 0 || b.length === 0 || a.some((unit) => b.includes(unit));
}
