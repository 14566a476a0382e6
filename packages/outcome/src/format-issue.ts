import type { Issue, IssuePath } from "./issue.ts";

/**
 * One issue as a line of text: where, how serious, what is wrong, what was expected, and the code.
 *
 * @example
 * ```ts
 * import { createIssue, defineIssues, formatIssue } from "@tapewise/outcome";
 * const catalogue = defineIssues({
 *   "no-unit": { severity: "error", message: "{received} has no unit", expected: "a length with a unit" },
 * });
 * formatIssue(createIssue(catalogue, "no-unit", { path: ["readings", 1], received: "19" }));
 * // => "readings[1]: error: 19 has no unit (expected a length with a unit) [no-unit]"
 * ```
 */
export function formatIssue(issue: Issue): string {
  const where = [formatPlace(issue), formatPath(issue.path)].filter((part) => part !== "").join(" ");
  const text = `${issue.severity}: ${issue.message} (expected ${issue.expected}) [${issue.code}]`;
  return where === "" ? text : `${where}: ${text}`;
}

/**
 * A path as text, the way a programmer would write it.
 *
 * @example
 * ```ts
 * import { formatPath } from "@tapewise/outcome";
 * formatPath(["sizes", 2, "torso-length"]); // => "sizes[2].torso-length"
 * ```
 */
export function formatPath(path: IssuePath): string {
  let text = "";
  for (const step of path) {
    if (typeof step === "number") text += `[${step}]`;
    else text += text === "" ? step : `.${step}`;
  }
  return text;
}

function formatPlace(issue: Issue): string {
  if (issue.place === undefined) return "";
  const { file, line, column } = issue.place;
  return file === undefined ? `line ${line}, column ${column}` : `${file}:${line}:${column}`;
}
