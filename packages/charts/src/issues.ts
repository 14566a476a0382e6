import { auditIssues } from "./audit-issues.ts";
import { readingIssues } from "./reading-issues.ts";

/** What each issue code of this package means. Reading and audit take their part, so that either comes alone. */
export const chartsIssues: typeof readingIssues & typeof auditIssues = { ...readingIssues, ...auditIssues };
