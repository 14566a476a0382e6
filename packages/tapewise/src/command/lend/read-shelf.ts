import type { ShelfSize } from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import {
  closestWord,
  createIssue,
  didYouMean,
  type Facts,
  failure,
  hasIssues,
  type Issue,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { asWritten, type Cell, placeOf, readTable } from "@tapewise/tables";
import { tapewiseIssues } from "../../issues.ts";

const COLUMNS = ["chart", "size", "count"] as const;
/** More of one size than this is a slip of the keyboard. */
const MOST_PACKS = 100_000;

/**
 * Reads how many of each size there are: delimited text with the columns chart, size and count, in any order. Rows
 * that cannot be used are left out and told.
 *
 * Codes: `shelf-column-missing`, `shelf-row-ragged`, `shelf-quote-open`, `shelf-count-invalid`,
 * `shelf-chart-unknown`, `shelf-size-unknown`, `shelf-pack-repeated`, `shelf-without-packs`.
 */
export function readShelf(
  text: string,
  charts: readonly SizeChart[],
  file: string,
): Outcome<readonly ShelfSize[]> {
  const { rows, quoteFaults } = asWritten(readTable(text.replace(/^\uFEFF/, "")));
  const [header, ...lines] = rows.flatMap((row) => (row.kind === "cells" ? [row] : []));
  const issues: Issue[] = quoteFaults.map(({ line, column, written }) =>
    createIssue(tapewiseIssues, "shelf-quote-open", {
      received: written,
      place: placeOf(line, column, file),
    }),
  );
  const names = (header?.cells ?? []).map((cell) => cell.text.trim().toLowerCase());
  const missing = COLUMNS.filter((column) => !names.includes(column)).map((column) => {
    const details = { received: names.join(", "), place: placeOf(header?.line ?? 1, 1, file) };
    return createIssue(tapewiseIssues, "shelf-column-missing", { ...details, facts: { column } });
  });
  if (hasIssues(missing)) return failure(missing);

  const shelf: ShelfSize[] = [];
  const seen = new Set<string>();
  for (const { cells, line } of lines) {
    if (cells.length !== names.length) {
      const facts = { count: cells.length, columns: names.length };
      const details = { received: cells.map(({ text: cell }) => cell).join(","), facts };
      issues.push(
        createIssue(tapewiseIssues, "shelf-row-ragged", { ...details, place: placeOf(line, 1, file) }),
      );
      continue;
    }
    const row = readRow(cells, names, charts, file);
    if (!row.ok) {
      issues.push(...row.issues);
      continue;
    }
    const pack = `${row.value.chart}, ${row.value.size}`;
    if (seen.has(pack)) {
      const details = { received: pack, place: placeOf(line, 1, file) };
      issues.push(createIssue(tapewiseIssues, "shelf-pack-repeated", details));
      continue;
    }
    seen.add(pack);
    shelf.push(row.value);
  }
  if (shelf.length > 0) return success(shelf, issues);
  if (hasIssues(issues)) return failure(issues);
  const details = { received: text.trim(), place: placeOf(header?.line ?? 1, 1, file) };
  return failure([createIssue(tapewiseIssues, "shelf-without-packs", details)]);
}

function readRow(
  cells: readonly Cell[],
  names: readonly string[],
  charts: readonly SizeChart[],
  file: string,
): Outcome<ShelfSize> {
  const of = (column: (typeof COLUMNS)[number]): Cell =>
    cells[names.indexOf(column)] ?? { text: "", line: 1, column: 1 };
  const fail = (code: keyof typeof tapewiseIssues, cell: Cell, facts: Facts): Outcome<never> => {
    const place = placeOf(cell.line, cell.column, file);
    return failure([createIssue(tapewiseIssues, code, { received: cell.text, facts, place })]);
  };
  const [chartCell, sizeCell, countCell] = [of("chart"), of("size"), of("count")];
  const chart = charts.find((one) => one.chart === chartCell.text.trim());
  if (chart === undefined) {
    return fail(
      "shelf-chart-unknown",
      chartCell,
      namesFacts(
        "charts",
        chartCell,
        charts.map((one) => one.chart),
      ),
    );
  }
  const size = chart.sizes.find(({ name }) => name === sizeCell.text.trim());
  if (size === undefined) {
    const facts = namesFacts(
      "sizes",
      sizeCell,
      chart.sizes.map(({ name }) => name),
    );
    return fail("shelf-size-unknown", sizeCell, { ...facts, chart: chart.chart });
  }
  const count = Number(countCell.text.trim());
  if (!/^\d+$/.test(countCell.text.trim()) || count > MOST_PACKS) {
    return fail("shelf-count-invalid", countCell, { most: MOST_PACKS });
  }
  return success({ chart: chart.chart, size: size.name, count });
}

function namesFacts(fact: string, { text }: Cell, known: readonly string[]): Facts {
  const near = closestWord(text.trim(), known);
  return { [fact]: known.join(", "), hint: didYouMean(near === undefined ? [] : [near]) };
}
