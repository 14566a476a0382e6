import { outcome } from "tapewise";
import { duckdbIssues } from "../issues.ts";
import { writeText } from "../sql/write-sql.ts";

/** The formats that tables are read and written in. */
export type TableFormat = "parquet" | "csv";

/** The format of a table by the ending of its path. Code: `table-format-unknown`. */
export function formatOf(path: string): outcome.Outcome<TableFormat> {
  const [, ending] = /\.(parquet|csv)$/i.exec(path) ?? [];
  if (ending === undefined) {
    return outcome.failure([outcome.createIssue(duckdbIssues, "table-format-unknown", { received: path })]);
  }
  return outcome.success(ending.toLowerCase() === "csv" ? "csv" : "parquet");
}

/**
 * The function that reads a table. Cells of CSV stay text as they were written; a line that is no row of the table is
 * put aside with its number and reason, which `reject_errors` then holds.
 */
export function readerSql(path: string, format: TableFormat, keepsRejects: boolean): string {
  if (format === "parquet") return `read_parquet(${writeText(path)})`;
  const rejects = keepsRejects ? "store_rejects = true" : "ignore_errors = true";
  return `read_csv(${writeText(path)}, header = true, skip = 0, all_varchar = true, ${rejects})`;
}

/** How a table is written. Row groups are small, so that little of it is in memory at a time. */
export function writerOptions(format: TableFormat): string {
  return format === "csv" ? "(FORMAT csv, HEADER true)" : "(FORMAT parquet, ROW_GROUP_SIZE 20480)";
}
