/// <reference types="node" />
import { rename, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { resolve } from "node:path";
import { type DuckDBConnection, DuckDBInstance } from "@duckdb/node-api";
import { type charts, outcome, tapewiseIssues } from "tapewise";
import type { PriorChoice } from "tapewise/batch";
import { duckdbIssues } from "../issues.ts";
import { writeText } from "../sql/write-sql.ts";
import { registerAnswers } from "./answer-function.ts";
import { choicesTableSql } from "./choices-table-sql.ts";
import { readColumns } from "./read-columns.ts";
import { appendRejects } from "./rejects.ts";
import { formatOf, readerSql, type TableFormat, writerOptions } from "./table-format.ts";

/** What to read and where to write. */
export interface AnswerTableOptions {
  /** The table of people: a path that ends in `.parquet` or `.csv`. */
  readonly input: string;
  /** Where the choices go: another such path. A file that is there is replaced at the end. */
  readonly output: string;
  readonly charts: readonly charts.SizeChart[];
  /** Headers for columns that are called otherwise: `{ "back, cm": "torso-length (cm)" }`. */
  readonly columns?: Readonly<Record<string, string>>;
  /** What is known of people beforehand, as for `tapewise batch`. */
  readonly prior?: PriorChoice;
}

/** What became of a table. */
export interface AnsweredTable {
  /** People who were read. */
  readonly people: number;
  /** Those of them who got issues in place of a choice. */
  readonly withoutChoice: number;
  /** Lines of CSV that are no row of the table; each has a row with its issue at the end of the choices. */
  readonly unreadable: number;
}

/** What the engine may hold at a time; the rest it puts on disk. Assumption: a tenth of a small machine's. */
const MOST_MEMORY = "400MB";

/**
 * Answers a table of people, in Parquet or CSV, with a table of choices in either: what `tapewise batch` does for
 * lines, through DuckDB and in flat memory, however long the table is.
 *
 * A header is a field of a person as the batch contract has it, or a dimension with the number of the reading and the
 * unit of bare numbers: `id`, `cut`, `stature (cm)`, `torso-length 1 (cm)`. A column of Parquet may hold lists of
 * readings. Out comes a row for each person and chart, with the number of the row, the `id` as it came in, `chart`,
 * `pick`, `verdict`, `probability`, `expected_misfit_mm`, `belt_pick`, `belt_probability`, `reasons` and `sizes`
 * (JSON). Nobody is left out: a person without a choice has a row with `issue_codes` and `issues` (JSON).
 *
 * Codes: `file-missing`, `file-is-directory`, `table-format-unknown`, `table-unreadable`, `table-unwritable`,
 * `table-output-is-input`, `table-without-readings`, `table-column-missing`, `table-column-misspelt`,
 * `table-column-repeated`; a warning: `table-column-unknown`; in rows: `table-row-unreadable` and those of
 * `chooseLine`.
 *
 * @example
 * ```ts
 * import { tmpdir } from "node:os";
 * import { join } from "node:path";
 * import { answerTable } from "@tapewise/duckdb";
 * import { charts } from "tapewise";
 * const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const found = await answerTable({
 *   input: "packages/duckdb/demo/crew.csv",
 *   output: join(tmpdir(), "choices.parquet"),
 *   charts: [chart],
 * });
 * found.ok && found.value; // => { people: 5, withoutChoice: 1, unreadable: 0 }
 * ```
 */
export async function answerTable(options: AnswerTableOptions): Promise<outcome.Outcome<AnsweredTable>> {
  const { input, output } = options;
  const [from, to] = [formatOf(input), formatOf(output)];
  if (!from.ok) return from;
  if (!to.ok) return to;
  if (resolve(input) === resolve(output)) return fail("table-output-is-input", output);
  const missing = await missingFile(input);
  if (missing !== undefined) return outcome.failure([missing]);
  const part = `${output}.part`;
  try {
    await writeFile(part, "");
  } catch (error) {
    return fail("table-unwritable", output, codeOf(error));
  }
  const instance = await DuckDBInstance.create(":memory:", {
    autoinstall_known_extensions: "false",
    autoload_known_extensions: "false",
    temp_directory: tmpdir(),
    // Lines are answered one after the other anyhow, and more threads would only hold more rows that wait for it.
    threads: "1",
    memory_limit: MOST_MEMORY,
  });
  const connection = await instance.connect();
  try {
    const answered = await answerParts(connection, options, from.value, to.value, part);
    if (answered.ok) await rename(part, output);
    return answered;
  } finally {
    await rm(part, { force: true });
    connection.closeSync();
    instance.closeSync();
  }
}

async function answerParts(
  connection: DuckDBConnection,
  { input, charts: shelf, columns = {}, prior = "automatic" }: AnswerTableOptions,
  from: TableFormat,
  to: TableFormat,
  part: string,
): Promise<outcome.Outcome<AnsweredTable>> {
  try {
    const described = await connection.runAndReadAll(
      `DESCRIBE SELECT * FROM ${readerSql(input, from, false)}`,
    );
    const found = described.getRowsJS().map(([name, type]) => ({ name: String(name), type: String(type) }));
    const read = readColumns(found, columns, input);
    if (!read.ok) return read;
    const count = registerAnswers(connection, shelf, prior);
    const query = choicesTableSql(read.value, readerSql(input, from, from === "csv"));
    await connection.run(`COPY (${query}) TO ${writeText(part)} ${writerOptions(to)}`);
    const unreadable = from === "csv" ? await appendRejects(connection, part, to) : 0;
    return outcome.success({ ...count(), unreadable }, read.issues);
  } catch (error) {
    return fail("table-unreadable", input, firstLine(error));
  }
}

async function missingFile(path: string): Promise<outcome.Issue | undefined> {
  try {
    const isFolder = (await stat(path)).isDirectory();
    return isFolder
      ? outcome.createIssue(tapewiseIssues, "file-is-directory", { received: path })
      : undefined;
  } catch {
    return outcome.createIssue(tapewiseIssues, "file-missing", { received: path });
  }
}

function fail(code: keyof typeof duckdbIssues, received: string, reason?: string): outcome.Outcome<never> {
  const facts = reason === undefined ? {} : { reason };
  return outcome.failure([outcome.createIssue(duckdbIssues, code, { received, facts })]);
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split("\n")[0] ?? "";
}

function codeOf(error: unknown): string {
  return error instanceof Error && "code" in error ? String(error.code) : "unknown reason";
}
