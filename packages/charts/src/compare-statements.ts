import { createIssue, type Issue } from "@tapewise/outcome";
import { cellIssues } from "./cell-issues.ts";
import type { Statement } from "./statement.ts";
import { tidy } from "./tidy.ts";

const ENDS = ["from", "to", "nominal"] as const;
const END_WORDS = { from: "lower end", to: "upper end", nominal: "nominal length" } as const;

/**
 * What two statements of one range, in two units, contradict each other in.
 *
 * One of them is the original and the other was converted and rounded, so that they may differ by half
 * a step of the coarser writing: 15 in (38.1 cm) beside 38 cm agrees, 40 cm beside 15 in does not.
 */
export function compareStatements(first: Statement, second: Statement): readonly Issue[] {
  const received = `${first.stated} | ${second.stated}`;
  if (ENDS.some((end) => (first[end] === undefined) !== (second[end] === undefined))) {
    return [createIssue(cellIssues, "chart-statements-differ-in-kind", { received })];
  }
  const issues: Issue[] = [];
  for (const end of ENDS) {
    const a = first[end];
    const b = second[end];
    if (a === undefined || b === undefined) continue;
    const difference = Math.abs(a.mm - b.mm);
    const allowed = Math.max(a.stepMm, b.stepMm) / 2;
    if (difference <= allowed * (1 + 1e-9)) continue;
    const facts = {
      end: END_WORDS[end],
      firstMm: tidy(a.mm),
      secondMm: tidy(b.mm),
      differenceMm: tidy(difference),
      allowedMm: tidy(allowed),
    };
    issues.push(createIssue(cellIssues, "chart-statements-disagree", { path: [], received, facts }));
  }
  return issues;
}
