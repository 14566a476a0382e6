import type { Issue } from "@tapewise/outcome";
import { issueBullets } from "./issue-bullets.ts";

/** What is wrong with a chart, and then what is odd about it. */
export function findingLines(findings: readonly Issue[]): string[] {
  if (findings.length === 0) return ["  Nothing to object to."];
  const wrong = findings.filter((finding) => finding.severity === "error");
  const odd = findings.filter((finding) => finding.severity === "warning");
  return [
    ...(wrong.length === 0 ? [] : [`  Wrong (${wrong.length})`, ...issueBullets(wrong, { oneFile: true })]),
    ...(odd.length === 0 ? [] : [`  Worth a look (${odd.length})`, ...issueBullets(odd, { oneFile: true })]),
  ];
}
