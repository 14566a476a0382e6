import type { ColumnRow } from "./column-row.ts";

/** Two figures that differ by less may stand the other way round where they are worked out another way. */
export const CLOSE = 1e-13;

/** Whether a figure is at or above a limit; a figure that is as good as at it makes the row close. */
export function reaches(row: ColumnRow, figure: number, limit: number): boolean {
  if (Math.abs(figure - limit) < CLOSE) row.isClose = true;
  return figure >= limit;
}
