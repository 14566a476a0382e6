import { AGAIN } from "./column-codes.ts";
import type { ColumnRow } from "./column-row.ts";
import { judgeRow } from "./judge-row.ts";
import { isLookWorthwhile } from "./look-row.ts";
import { settleRow } from "./settle-row.ts";

/**
 * Chooses a size for the person whose beliefs stand in the row, and writes the answer beside them. Figures are not
 * checked: means are to be finite, uncertainties 0 mm or more, degrees of freedom above 1.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { chooseRow, columnVerdicts, createRow, safeCompileColumns } from "@tapewise/fit";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Demo" });
 * const plan = safeCompileColumns(chart, { read: ["torso-length"] });
 * if (!plan.ok) throw new Error("no plan");
 * const row = createRow(plan.value, 0);
 * row.means[0] = 450;
 * row.sds[0] = 5;
 * chooseRow(row);
 * [plan.value.sizes[row.pick], columnVerdicts[row.verdict]]; // => ["M", "fits"]
 * ```
 */
export function chooseRow(row: ColumnRow): void {
  judgeRow(row);
  settleRow(row);
  const isAgain = row.isOpen || row.plan.tables.lacksLength;
  if (isAgain || isLookWorthwhile(row)) row.verdict = AGAIN;
}
