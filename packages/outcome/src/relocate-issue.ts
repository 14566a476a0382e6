import type { Issue, IssuePath, Place } from "./issue.ts";

/**
 * The same issue seen from outside: `prefix` is put before its path, and a place is added where the
 * issue has none yet.
 *
 * @example
 * ```ts
 * import { createIssue, defineIssues, relocateIssue } from "@tapewise/outcome";
 * const catalogue = defineIssues({ "bad-cell": { severity: "error", message: "bad", expected: "good" } });
 * const issue = createIssue(catalogue, "bad-cell", { path: ["from"] });
 * relocateIssue(issue, ["sizes", 2], { line: 4, column: 7 }).path; // => ["sizes", 2, "from"]
 * ```
 */
export function relocateIssue(issue: Issue, prefix: IssuePath, place?: Place): Issue {
  const moved: Issue = { ...issue, path: [...prefix, ...issue.path] };
  return place === undefined || issue.place !== undefined ? moved : { ...moved, place };
}
