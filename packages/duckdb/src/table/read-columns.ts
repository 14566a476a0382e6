import { outcome } from "tapewise";
import { duckdbIssues } from "../issues.ts";
import { columnWords, type PersonColumn, readHeader } from "./person-column.ts";

/** A column as the table has it. */
export interface TableColumn {
  readonly name: string;
  readonly type: string;
}

/**
 * Tells what the columns of a table hold, by their headers, or by the headers that `columns` gives them.
 *
 * Codes: `table-column-missing`, `table-column-misspelt`, `table-column-repeated`, `table-without-readings`; a
 * warning: `table-column-unknown`.
 */
export function readColumns(
  found: readonly TableColumn[],
  columns: Readonly<Record<string, string>>,
  table: string,
): outcome.Outcome<readonly PersonColumn[]> {
  const issues: outcome.Issue[] = [];
  const say = (code: keyof typeof duckdbIssues, received: string, facts: outcome.Facts) => {
    issues.push(outcome.createIssue(duckdbIssues, code, { path: ["columns", received], received, facts }));
  };
  const names = found.map(({ name }) => name);
  for (const name of Object.keys(columns)) {
    if (names.includes(name)) continue;
    const suggestion = outcome.closestWord(name, names);
    const hint = outcome.didYouMean(suggestion === undefined ? [] : [suggestion]);
    say("table-column-missing", name, { hint, columns: names.join(", ") });
  }
  const read: PersonColumn[] = [];
  for (const { name, type } of found) {
    const header = Object.hasOwn(columns, name) ? (columns[name] ?? name) : name;
    const told = readHeader(header);
    if (told !== undefined) read.push({ column: name, type, ...told });
    else {
      const suggestion = suggest(header);
      const isMeant = suggestion !== undefined || header !== name;
      if (isMeant)
        say("table-column-misspelt", name, { column: header, suggestion: suggestion ?? "torso-length (cm)" });
      else say("table-column-unknown", name, { column: header });
    }
  }
  for (const { field, column } of repeated(read)) say("table-column-repeated", column, { field });
  if (!read.some(({ kind, field }) => kind === "reading" || field === "stature")) {
    issues.push(
      outcome.createIssue(duckdbIssues, "table-without-readings", { path: ["columns"], received: table }),
    );
  }
  const isSound = issues.every(({ severity }) => severity === "warning");
  if (!isSound && outcome.hasIssues(issues)) return outcome.failure(issues);
  return outcome.success(
    read.toSorted((a, b) => (a.number ?? 0) - (b.number ?? 0)),
    issues,
  );
}

/** The known word that a header nearly begins with, its number and unit set aside. */
function suggest(header: string): string | undefined {
  const [, word = "", rest = ""] = /^([^\d(]+?)(\s*[\d(].*)?$/.exec(header.trim()) ?? [];
  const closest = outcome.closestWord(word, columnWords);
  return closest === undefined ? undefined : `${closest}${closest === word ? " (cm)" : rest}`;
}

function repeated(columns: readonly PersonColumn[]): readonly PersonColumn[] {
  return columns.filter(
    ({ kind, field }, k) =>
      kind !== "reading" && columns.findIndex((one) => one.kind !== "reading" && one.field === field) < k,
  );
}
