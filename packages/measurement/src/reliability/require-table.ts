import { InvalidArgumentError } from "@tapewise/outcome";

/** Squares of values beyond this are beyond the range of doubles. */
const LARGEST_VALUE = 1e70;

/** Refuses what is not a complete table of numbers with at least two rows and columns; tells its size. */
export function requireTable(
  argument: string,
  table: readonly (readonly number[])[],
): { readonly rows: number; readonly columns: number } {
  if (!(Array.isArray(table) && table.length >= 2)) {
    throw new InvalidArgumentError(argument, table, "a table of two rows or more");
  }
  const columns: unknown = table[0]?.length;
  if (!(typeof columns === "number" && columns >= 2)) {
    throw new InvalidArgumentError(`${argument}[0]`, table[0], "a row of two values or more");
  }
  for (const [i, row] of table.entries()) {
    if (!(Array.isArray(row) && row.length === columns)) {
      throw new InvalidArgumentError(`${argument}[${i}]`, row, `a row of ${columns} values like the first`);
    }
    for (const [j, value] of row.entries()) requireValue(`${argument}[${i}][${j}]`, value);
  }
  return { rows: table.length, columns };
}

/** Refuses what is not a number whose square a double can hold. */
export function requireValue(argument: string, value: unknown): void {
  if (!(typeof value === "number" && Math.abs(value) <= LARGEST_VALUE)) {
    throw new InvalidArgumentError(argument, value, `a number from −${LARGEST_VALUE} to ${LARGEST_VALUE}`);
  }
}
