import { AGAIN } from "./column-codes.ts";
import type { ColumnRow } from "./column-row.ts";
import { judgeRow } from "./judge-row.ts";
import { isLookWorthwhile } from "./look-row.ts";
import { settleRow } from "./settle-row.ts";

/** Chooses a size for the person whose beliefs stand in the row. */
export function chooseRow(row: ColumnRow): void {
  judgeRow(row);
  settleRow(row);
  const isAgain = row.isOpen || row.plan.tables.lacksLength;
  if (isAgain || isLookWorthwhile(row)) row.verdict = AGAIN;
}
