import { createEvidence, type Evidence, type ReadOutcomes, safeSeeOutcome } from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import { createIssue, type Issue, relocateIssue } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";
import { counted } from "../report/log-lines.ts";

/** What a log teaches about some charts. */
export interface LearnedFromLog {
  readonly evidence: Evidence;
  /** How many rows are of each chart, in the order of the charts. */
  readonly rows: readonly number[];
  /** Why rows were not used; one issue for all that were not used for the same reason, at the first of them. */
  readonly issues: readonly Issue[];
}

/**
 * Holds every row of a log against the chart that its size was taken from; where several charts have its maker and name,
 * it is held against none. Codes beside those of `safeSeeOutcome`: `log-chart-not-found`, `log-chart-ambiguous`.
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
  const ambiguous = new Map<string, { count: number; charts: number }>();
  for (const [index, row] of rows.entries()) {
    const { maker, chart: name } = row.product;
    const isOf = (one: SizeChart): boolean => one.chart === name && one.maker === maker;
    const place = charts.findIndex(isOf);
    const chart = charts[place];
    const product = maker === undefined ? name : `${name} (${maker})`;
    const named = charts.filter(isOf).length;
    if (named > 1) {
      ambiguous.set(product, { count: (ambiguous.get(product)?.count ?? 0) + 1, charts: named });
      continue;
    }
    if (chart === undefined) {
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
    createIssue(tapewiseIssues, "log-chart-not-found", {
      received,
      facts: {
        what: counted(count, "outcome in the log is", "outcomes in the log are"),
        were: count === 1 ? "was" : "were",
      },
    }),
  );
  const unclear = [...ambiguous].map(([received, facts]) =>
    createIssue(tapewiseIssues, "log-chart-ambiguous", { received, facts }),
  );
  return { evidence, rows: counts, issues: [...issues.values(), ...unknown, ...unclear] };
}
