import type { fit } from "tapewise";
import { fitParts, select } from "./fit-parts.ts";
import type { PeopleTable } from "./people-table.ts";
import { writeWith } from "./write-sql.ts";

/**
 * A query of standard SQL that tells how every size of a chart fits every person of a table: one row for each of
 * both, with `id`, `size_no` (from 1, in the order of the plan), `size`, `probability`, `expected_misfit_mm` and
 * `issue`.
 *
 * Beliefs are normal and independent of each other, so that both figures are closed forms: a difference of two normal
 * tails ({@link normalTailSql}) in each dimension, multiplied, and a sum of expected distances. They agree with
 * `chooseColumns` to 10⁻¹³ and 10⁻¹⁰ mm. Student's t, that is estimates with finite degrees of freedom, stays with the
 * library. A person whose figures are missing or no lengths gets no figures but the issue `sql-belief-missing`
 * or `sql-belief-invalid`.
 *
 * @throws {@link InvalidArgumentError} for a unit that is none.
 *
 * @example
 * ```ts
 * import { sizeFitsSql } from "@tapewise/duckdb";
 * import { charts, fit, outcome } from "tapewise";
 * const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const plan = outcome.unwrap(fit.safeCompileColumns(chart, { read: ["torso-length"] }));
 * sizeFitsSql(plan, { people: "members", id: "member", unit: "cm" }).includes("torso_length_mean"); // => true
 * ```
 */
export function sizeFitsSql(plan: fit.ColumnPlan, table: PeopleTable): string {
  const columns = ["id", "size_no", "size", "probability", "expected_misfit_mm", "issue"];
  return `${writeWith(fitParts(plan, table))}\n${select(columns, "tw_fits")}`;
}
