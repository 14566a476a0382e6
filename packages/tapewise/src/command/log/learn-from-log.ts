import { createEvidence, type Evidence, type ReadOutcomes, safeSeeOutcome } from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import { createIssue, type Issue, relocateIssue } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";

/** What a log teaches about some charts. */
export interface LearnedFromLog {
  readonly evidence: Evidence;
  /** How many rows are of each chart, in the order of the charts. */
  readonly rows: readonly number[];
  /** Why rows were not used; one issue for all that were not used for the same reason, at the first of them. */
  readonly issues: readonly Issue[];
}

/**
 * Holds every row of a log against the chart that its size was taken from. Code beside those of `safeSeeOutcome`:
 * `log-chart-not-found`.
 */
export function learnFromLog(
  { rows, lines }: Pick<ReadOutcomes, "rows" | "lines">,
  charts: readonly SizeChart[],
  file: string,
): LearnedFromLog {
  const evidence = createEvidence();
  const counts = charts.map(() => 0);
  const issues = new Map<string, Issue>();
  const strangers = new Map<string, number>();
  for (const [index, row] of rows.entries()) {
    const { maker, chart: name } = row.product;
    const place = charts.findIndex((one) => one.chart === name && one.maker === maker);
    const chart = charts[place];
    if (chart === undefined) {
      const product = maker === undefined ? name : `${name} (${maker})`;
      strangers.set(product, (strangers.get(product) ?? 0) + 1);
      continue;
    }
    counts[place] = (counts[place] ?? 0) + 1;
    const seen = safeSeeOutcome(row, chart);
    for (const issue of seen.issues) {
      const key = `${issue.code} ${issue.message}`;
      const where = { file, line: lines[index] ?? 1, column: 1 };
      if (!issues.has(key)) issues.set(key, relocateIssue(issue, [], where));
    }
    if (seen.ok) for (const one of seen.value) evidence.add(one);
  }
  const unknown = [...strangers].map(([received, count]) =>
    createIssue(tapewiseIssues, "log-chart-not-found", { received, facts: { count } }),
  );
  return { evidence, rows: counts, issues: [...issues.values(), ...unknown] };
}
