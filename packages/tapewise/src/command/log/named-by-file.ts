import { createIssue, type Issue } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";
import type { LoadedChart } from "../load-charts.ts";

/**
 * Charts whose outcomes are told apart by nothing but the name of a file, which charts of other packs may have as well.
 * Code: `log-chart-named-by-file`.
 */
export function namedByFile(loaded: readonly LoadedChart[]): readonly Issue[] {
  return loaded
    .filter(({ isNamedByFile }) => isNamedByFile)
    .map(({ file, chart }) =>
      createIssue(tapewiseIssues, "log-chart-named-by-file", { received: chart.chart, facts: { file } }),
    );
}
