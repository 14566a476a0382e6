import type { Command } from "commander";
import { fileOutcomeStore } from "../../log/file-outcome-store.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes } from "../files.ts";
import { print, printJson } from "../io.ts";
import { readLog } from "../log/read-log.ts";
import { jsonOption } from "../options.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { counted } from "../report/log-lines.ts";
import { placedIssue } from "../report/placed-issue.ts";
import { cleanWord } from "../text/clean.ts";
import { wrap } from "../text/wrap.ts";

/** `tapewise log forget`: takes a person out of a log. */
export function addLogForget(log: Command, context: Context): void {
  log
    .command("forget")
    .summary("take every row of one person out of a log")
    .description(
      "Takes every row of one person out of a log, while others may go on adding to it. Backups and copies are beyond its reach.",
    )
    .argument("<file>", "the log")
    .argument("<pseudonym>", "the pseudonym that the rows were added under")
    .addOption(jsonOption())
    .addHelpText("after", "\nExample:\n  tapewise log forget log.ndjson heron")
    .action((file: string, pseudonym: string, options: { readonly json?: boolean }) =>
      runForget(file, pseudonym, options, context),
    );
}

async function runForget(
  file: string,
  pseudonym: string,
  { json }: { readonly json?: boolean },
  { io, finish }: Context,
): Promise<void> {
  // A log that is not there would look as if everybody were forgotten in it.
  const read = await readLog(file);
  const outcome = read.ok ? await fileOutcomeStore(file).forget(pseudonym) : read;
  if (!outcome.ok) {
    finish(outcome.issues.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
    return json === true
      ? printJson(io.stdout, { issues: outcome.issues.map(placedIssue) })
      : print(io.stderr, issueBullets(outcome.issues, { margin: "" }));
  }
  const { rows, unreadable } = outcome.value;
  if (json === true) return printJson(io.stdout, { forgotten: { rows, unreadable } });
  const broken =
    unreadable === 0
      ? ""
      : `, and ${counted(unreadable, "line that cannot be read and names", "lines that cannot be read and name")} them`;
  await print(
    io.stdout,
    rows + unreadable === 0
      ? wrap(`Nobody is called “${cleanWord(pseudonym)}” in this log; nothing was changed.`)
      : wrap(
          `Forgotten: ${counted(rows, "row", "rows")} of ${cleanWord(pseudonym)}${broken}. Backups and copies are yours to clear.`,
        ),
  );
}
