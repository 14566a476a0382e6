import type { Issue } from "@tapewise/outcome";
import type { Context } from "./context.ts";
import { EXIT } from "./exit-status.ts";
import { pathCodes } from "./files.ts";
import { print, printJson } from "./io.ts";
import { issueBullets } from "./report/issue-bullets.ts";
import { placedIssue } from "./report/placed-issue.ts";

/**
 * Says what keeps a verb from answering: as JSON where that was asked for, else as a list on standard error. A path
 * that cannot be opened is a wrong call; what stands in a file is the data's.
 */
export async function refuse(
  issues: readonly Issue[],
  { json }: { readonly json?: boolean },
  { io, finish }: Context,
): Promise<void> {
  finish(issues.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
  if (json === true) await printJson(io.stdout, { issues: issues.map(placedIssue) });
  else await print(io.stderr, issueBullets(issues, { margin: "" }));
}
