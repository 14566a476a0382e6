import type { ReadOutcomes } from "@tapewise/afterwards";
import type { Command } from "commander";
import { fileOutcomeStore } from "../../log/file-outcome-store.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes } from "../files.ts";
import { print, printJson } from "../io.ts";
import { readLog } from "../log/read-log.ts";
import { requireLog } from "../log/require-log.ts";
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
  const read = await requireLog(file);
  const outcome = read.ok ? await fileOutcomeStore(file).forget(pseudonym) : read;
  const left = outcome.ok ? await readLog(file) : outcome;
  if (!outcome.ok || !left.ok) {
    finish(left.issues.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
    return json === true
      ? printJson(io.stdout, { issues: left.issues.map(placedIssue) })
      : print(io.stderr, issueBullets(left.issues, { margin: "" }));
  }
  const { rows, unreadable } = outcome.value;
  const unread = unreadLines(left.value);
  const alike = namesAlike(left.value, pseudonym);
  // Whether all that there was of the person is gone cannot be told.
  if (unread.length > 0) finish(EXIT.issues);
  if (json === true)
    return printJson(io.stdout, { forgotten: { rows, unreadable }, unreadLines: unread, alike });
  const who = `“${cleanWord(pseudonym)}”`;
  const broken =
    unreadable === 0
      ? ""
      : `, and ${counted(unreadable, "line that cannot be read and names", "lines that cannot be read and name")} them`;
  const done =
    rows + unreadable === 0
      ? `${unread.length === 0 ? `Nobody is called ${who} in this log` : `No row that can be read is of ${who}`}; nothing was changed.`
      : `Forgotten: ${counted(rows, "row", "rows")} of ${cleanWord(pseudonym)}${broken}. Backups and copies are yours to clear.`;
  const near =
    alike.length === 0
      ? []
      : wrap(
          `Written otherwise, and left in the log: ${alike.map((name) => shown(name, pseudonym)).join(", ")}. If that is whom you mean, forget it as it stands there.`,
        );
  const rest =
    unread.length === 0
      ? []
      : wrap(
          `${counted(unread.length, "line", "lines")} of the log cannot be read and ${unread.length === 1 ? "was" : "were"} left in it (${listed(unread)}): whether ${who} is named there cannot be told. Look at ${unread.length === 1 ? "it" : "them"} yourself.`,
        );
  await print(io.stdout, [...wrap(done), ...near, ...rest]);
}

/** The numbers of lines that are no rows. */
function unreadLines({ issues }: ReadOutcomes): number[] {
  const lines = issues.flatMap(({ severity, place }) =>
    severity === "error" && place !== undefined ? [place.line] : [],
  );
  return [...new Set(lines)];
}

/** Other pseudonyms that differ in capitals, gaps or the form of their characters (Unicode NFKC) only. */
function namesAlike({ rows }: ReadOutcomes, pseudonym: string): string[] {
  const people = new Set(rows.flatMap(({ person }) => (person === undefined ? [] : [person])));
  return [...people].filter((person) => person !== pseudonym && folded(person) === folded(pseudonym));
}

function folded(name: string): string {
  return name.normalize("NFKC").toLowerCase().replace(/\s+/g, " ").trim();
}

/** A name; one that cannot be told from the other by sight with its rarer characters written as escapes. */
function shown(name: string, other: string): string {
  if (name.normalize("NFKC") !== other.normalize("NFKC")) return `“${cleanWord(name)}”`;
  return JSON.stringify(name).replace(
    /[^ -~]/gu,
    (sign) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`,
  );
}

const MOST_LISTED = 10;

function listed(lines: readonly number[]): string {
  const more = lines.length > MOST_LISTED ? `, and ${lines.length - MOST_LISTED} more` : "";
  return `${lines.length === 1 ? "line" : "lines"} ${lines.slice(0, MOST_LISTED).join(", ")}${more}`;
}
