import { readDelimitedText } from "./delimited-text.ts";
import { detectSeparator } from "./detect-separator.ts";
import type { DelimitedText, DelimitedTextOptions, Separator } from "./table-rows.ts";

/** How a table is written, where that is known. */
export interface TableOptions extends DelimitedTextOptions {
  /** What parts the cells; without it the text's own `sep=` line says so, or else its first lines show it. */
  readonly separator?: Separator | undefined;
}

/** A table as it was read, with what parts its cells. */
export interface Table extends DelimitedText {
  readonly separator: Separator;
}

/**
 * Reads delimited text whose separator need not be known. A first line `sep=;`, by which spreadsheets name
 * it, is no row; the lines below it keep their numbers.
 *
 * @throws {@link InvalidArgumentError} when a separator is named that is none of the three.
 *
 * @example
 * ```ts
 * import { readTable } from "@tapewise/tables";
 * const table = readTable("sep=;\nsubject;Ann 1 (cm)\ns1;43,2");
 * table.separator; // => ";"
 * table.rows.map((row) => row.line); // => [2, 3]
 * ```
 */
export function readTable(text: string, options: TableOptions = {}): Table {
  const declared = /^\uFEFF?sep=([,;\t])(?=[\r\n])/i.exec(text);
  const separator = options.separator ?? asSeparator(declared?.[1]) ?? detectSeparator(text, options);
  const read = readDelimitedText(text, separator, options);
  return { separator, ...read, rows: declared === null ? read.rows : read.rows.slice(1) };
}

function asSeparator(text: string | undefined): Separator | undefined {
  return text === "," || text === ";" || text === "\t" ? text : undefined;
}
