import type { Issue } from "@tapewise/outcome";
import type { IssueLine } from "./choice-line.ts";
import { summariseIssue } from "./summarise-issue.ts";

/** A line that says only what is wrong. */
export function issueLine(id: string | number | null, issues: readonly Issue[]): IssueLine {
  return { id, issues: issues.map(summariseIssue) };
}
