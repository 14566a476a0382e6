import { type OutcomeRow, type ReadOutcomes, writeOutcomeLine } from "@tapewise/afterwards";

/** The row with an id, and the line that it stands on. */
export function findId(
  { rows, lines }: ReadOutcomes,
  id: string | undefined,
): { readonly row: OutcomeRow; readonly line: number } | undefined {
  const place = id === undefined ? -1 : rows.findIndex((row) => row.id === id);
  const [row, line] = [rows[place], lines[place]];
  return row === undefined || line === undefined ? undefined : { row, line };
}

/** Whether two rows say the same. */
export function isSame(one: OutcomeRow, other: OutcomeRow): boolean {
  return writeOutcomeLine(one) === writeOutcomeLine(other);
}
