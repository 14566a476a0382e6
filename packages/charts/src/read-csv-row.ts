import { type Issue, type IssuePath, type Outcome, type Place, relocateIssue } from "@tapewise/outcome";
import { type Cell, placeOf } from "@tapewise/tables";
import { chartIssue } from "./chart-issue.ts";
import { LONGEST_CELL } from "./data.ts";
import type { DraftRange, DraftSize } from "./draft.ts";
import { shortText } from "./parts.ts";
import { readCell } from "./read-cell.ts";
import type { CsvColumns } from "./read-csv-columns.ts";
import { quantityUnits, readQuantityCell } from "./read-quantity-cell.ts";
import { readWord } from "./read-word.ts";
import { type ChartDimension, type HarnessKind, harnessKinds } from "./size-chart.ts";
import { isNotStated, tidyCell } from "./split-cell.ts";
import type { Statement } from "./statement.ts";

/** What surrounds a line: its table's width, where it sits in the chart, and the file. */
export interface RowContext {
  readonly columns: CsvColumns;
  readonly width: number;
  readonly path: IssuePath;
  readonly issues: Issue[];
  readonly file: string | undefined;
}

/** Reads one line as a size or a hip belt; nothing when it has no name. Readable cells are kept. */
export function readCsvRow(cells: readonly Cell[], context: RowContext): DraftSize | undefined {
  const { columns, path, issues, file } = context;
  const [first] = cells;
  const place = placeOf(first?.line ?? 1, first?.column ?? 1, file);
  const ragged = raggedIssue(cells, context, place);
  if (ragged !== undefined) issues.push(ragged);

  const ranges = new Map<ChartDimension, DraftRange>();
  const amounts: { capacity?: number; mass?: number } = {};
  let harness: HarnessKind | undefined;
  for (const column of columns.used) {
    const cell = cells[column.position];
    if (cell === undefined) continue;
    const at = placeOf(cell.line, cell.column, file);
    if (column.kind === "range")
      addRange(ranges, column.dimension, readCell(cell.text, column.units), at, context);
    else if (isNotStated(tidyCell(cell.text.slice(0, LONGEST_CELL)))) continue;
    else if (column.kind === "quantity") {
      const amount = readAmount(cell, column.quantity, column.unit);
      if (amount !== undefined) amounts[column.quantity] = amount;
      else issues.push(unreadable(cell, column.quantity, [...path, column.quantity], at));
    } else {
      const about = { path: [...path, "harness"], issues };
      harness = readWord(
        shortText(cell.text, "the harness", about, at),
        harnessKinds,
        "the harness",
        about,
        at,
      );
    }
  }
  const nameCell = cells[columns.names];
  const name =
    nameCell === undefined
      ? undefined
      : shortText(nameCell.text, "the name of a size", { path, issues }, place);
  if (name === undefined) {
    issues.push(chartIssue("chart-size-unnamed", { path, place }));
    return undefined;
  }
  return {
    name,
    ranges,
    ...(amounts.capacity === undefined ? {} : { capacityLitres: amounts.capacity }),
    ...(amounts.mass === undefined ? {} : { massGrams: amounts.mass }),
    ...(harness === undefined ? {} : { harness }),
    path,
    place,
  };
}

function raggedIssue(cells: readonly Cell[], { width, path }: RowContext, place: Place): Issue | undefined {
  const surplus = cells.slice(width).some((cell) => cell.text.trim() !== "");
  if (cells.length >= width && !surplus) return undefined;
  const kept = surplus ? "those without a header were left out" : "the missing ones count as not stated";
  const facts = { cells: cells.length, columns: width, kept };
  return chartIssue("chart-row-ragged", { path, place, received: cells[0]?.text, facts });
}

function addRange(
  ranges: Map<ChartDimension, DraftRange>,
  dimension: ChartDimension,
  outcome: Outcome<readonly Statement[]>,
  place: Place,
  { path, issues }: RowContext,
): void {
  issues.push(...outcome.issues.map((issue) => relocateIssue(issue, [...path, dimension], place)));
  const [first, ...others] = outcome.ok ? outcome.value : [];
  if (first === undefined) return;
  const earlier = ranges.get(dimension);
  const statements =
    earlier === undefined
      ? ([first, ...others] as const)
      : ([...earlier.statements, first, ...others] as const);
  ranges.set(dimension, { statements, place: earlier?.place ?? place });
}

function readAmount(cell: Cell, quantity: "capacity" | "mass", unit: number | undefined): number | undefined {
  return cell.text.length > LONGEST_CELL ? undefined : readQuantityCell(cell.text, quantity, unit);
}

function unreadable(cell: Cell, quantity: "capacity" | "mass", path: IssuePath, place: Place): Issue {
  const form = `one number above zero, in ${quantityUnits[quantity]}, with the unit in the cell or in the header`;
  return chartIssue("chart-quantity-unreadable", {
    path,
    place,
    received: cell.text,
    facts: { what: `a ${quantity}`, form },
  });
}
