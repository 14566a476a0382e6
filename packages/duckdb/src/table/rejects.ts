/// <reference types="node" />
import { rename, rm } from "node:fs/promises";
import type { DuckDBConnection } from "@duckdb/node-api";
import { outcome } from "tapewise";
import { duckdbIssues } from "../issues.ts";
import { writeText } from "../sql/write-sql.ts";
import { choiceColumns } from "./choices-table-sql.ts";
import { type TableFormat, writerOptions } from "./table-format.ts";

/**
 * Adds a row for every line that was no row of the table, with its issue, at the end of the choices; gives how many
 * there were.
 */
export async function appendRejects(
  connection: DuckDBConnection,
  part: string,
  format: TableFormat,
): Promise<number> {
  // Kept by the engine as a whole, for a stream would end with the next statement.
  const rejected = await connection.run(
    "SELECT line, min(error_message), min(csv_line) FROM reject_errors GROUP BY line ORDER BY line",
  );
  await connection.run("CREATE TEMP TABLE unreadable (issue_codes VARCHAR, issues VARCHAR)");
  const appender = await connection.createAppender("unreadable");
  let count = 0;
  for (
    let chunk = await rejected.fetchChunk();
    chunk !== null && chunk.rowCount > 0;
    chunk = await rejected.fetchChunk()
  ) {
    for (const [line, reason, text] of chunk.getRows()) {
      const facts = { line: Number(line), reason: String(reason) };
      const { code, severity, path, message, received, expected } = outcome.createIssue(
        duckdbIssues,
        "table-row-unreadable",
        { received: text === null ? undefined : String(text), facts },
      );
      appender.appendVarchar(code);
      appender.appendVarchar(JSON.stringify([{ code, severity, path, message, received, expected, facts }]));
      appender.endRow();
      count += 1;
    }
  }
  appender.closeSync();
  if (count > 0) await join(connection, part, format);
  return count;
}

/** Writes the choices anew with the unreadable lines behind them. */
async function join(connection: DuckDBConnection, part: string, format: TableFormat): Promise<void> {
  const joined = `${part}.joined`;
  const before =
    format === "csv"
      ? `read_csv(${writeText(part)}, header = true, all_varchar = true)`
      : `read_parquet(${writeText(part)})`;
  const empty = choiceColumns
    .map((name) => (name.startsWith("issue") ? name : `NULL AS "${name}"`))
    .join(", ");
  try {
    await connection.run(
      `COPY (SELECT * FROM ${before} UNION ALL SELECT ${empty} FROM unreadable) TO ${writeText(joined)} ${writerOptions(format)}`,
    );
    await rename(joined, part);
  } finally {
    await rm(joined, { force: true });
  }
}
