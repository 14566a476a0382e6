import type { Command } from "commander";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes } from "../files.ts";
import { print, printJson } from "../io.ts";
import { countOutcomes } from "../log/count-outcomes.ts";
import { readLog } from "../log/read-log.ts";
import { jsonOption } from "../options.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { logLines } from "../report/log-lines.ts";
import { placedIssue } from "../report/placed-issue.ts";

/** `tapewise log show`: what a log holds. */
export function addLogShow(log: Command, context: Context): void {
  log
    .command("show")
    .summary("count what a log holds, and tell which of its lines cannot be read")
    .description("Counts outcomes by product and size, and tells which lines cannot be read, and why.")
    .argument("<file>", "the log")
    .addOption(jsonOption())
    .addHelpText(
      "after",
      "\nExample:\n  tapewise log show log.ndjson\n\nThe exit status is 1 when a line cannot be read. Such lines stay in the file.",
    )
    .action((file: string, options: { readonly json?: boolean }) => runShow(file, options, context));
}

async function runShow(
  file: string,
  { json }: { readonly json?: boolean },
  { io, finish }: Context,
): Promise<void> {
  const read = await readLog(file);
  if (!read.ok) {
    finish(read.issues.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
    return json === true
      ? printJson(io.stdout, { issues: read.issues.map(placedIssue) })
      : print(io.stderr, issueBullets(read.issues, { margin: "" }));
  }
  const { rows, issues } = read.value;
  if (issues.some(({ severity }) => severity === "error")) finish(EXIT.issues);
  const products = countOutcomes(rows);
  if (json === true) {
    const people = new Set(rows.flatMap(({ person }) => (person === undefined ? [] : [person]))).size;
    return printJson(io.stdout, { rows: rows.length, people, products, issues: issues.map(placedIssue) });
  }
  await print(io.stdout, [
    ...logLines(file, rows, products),
    ...(issues.length === 0 ? [] : ["", "About the log", ...issueBullets(issues, { oneFile: true })]),
  ]);
}
