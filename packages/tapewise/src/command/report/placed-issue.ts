import type { Issue } from "@tapewise/outcome";
import { summariseIssue } from "../../batch/summarise-issue.ts";

/** An issue for programs, with its place in a file where it has one. */
export function placedIssue(issue: Issue): object {
  return { ...summariseIssue(issue), ...(issue.place === undefined ? {} : { place: issue.place }) };
}
