import { createIssue, failure, type Outcome } from "@tapewise/outcome";
import { afterwardsIssues } from "../issues.ts";
import type { OutcomeRow } from "./outcome-row.ts";
import { safeOutcomeRow } from "./safe-outcome-row.ts";

/**
 * Reads one line of a log.
 *
 * Codes: `outcome-line-not-json`, and those of {@link safeOutcomeRow}.
 *
 * @example
 * ```ts
 * import { safeParseOutcomeLine } from "@tapewise/afterwards";
 * const line = '{"v":1,"at":"2026-05-04","product":{"chart":"Doily 45"},"size":"M","outcome":"kept"}';
 * const outcome = safeParseOutcomeLine(line);
 * outcome.ok && outcome.value.size; // => "M"
 * safeParseOutcomeLine('{"v":2}').issues[0]?.code; // => "outcome-version-newer"
 * ```
 */
export function safeParseOutcomeLine(line: string): Outcome<OutcomeRow> {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return failure([createIssue(afterwardsIssues, "outcome-line-not-json", { received: line })]);
  }
  return safeOutcomeRow(value);
}
