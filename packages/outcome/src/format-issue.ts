import type { Issue, IssuePath } from "./issue.ts";
import { printable, quoted } from "./printable.ts";

// No dots, brackets, quotes or backslashes, nothing invisible, no space at either end.
const PLAIN_NAME = /^(?! )[^.[\]"\\\p{C}\p{Zl}\p{Zp}]+(?<! )$/u;

/**
 * One issue as one line of text: where, how serious, what is wrong, what was expected, and the code.
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
  return printable(where === "" ? text : `${where}: ${text}`);
}

/**
 * A path as text, the way a programmer would write it. A name that could be mistaken for something
 * else (empty, with a dot, a bracket or a line break in it) is put in brackets and quotes, so that
 * different paths have different texts.
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
    else if (!PLAIN_NAME.test(step)) text += `[${quoted(step)}]`;
    else text += text === "" ? step : `.${step}`;
  }
  return text;
}

function formatPlace(issue: Issue): string {
  if (issue.place === undefined) return "";
  const { file, line, column } = issue.place;
  return file === undefined ? `line ${line}, column ${column}` : `${file}:${line}:${column}`;
}
