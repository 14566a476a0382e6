/** A cell with the place of its first character. Line and column count from 1. */
export interface Cell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/**
 * A line of cells, a remark (`# …`, kept whole, for its text may hold separators), or a blank line. A cell
 * in quotation marks may go over several lines; `line` is the first.
 */
export type Row =
  | { readonly kind: "cells"; readonly line: number; readonly cells: readonly Cell[] }
  | { readonly kind: "remark"; readonly line: number; readonly text: string }
  | { readonly kind: "blank"; readonly line: number };

/**
 * A cell whose quotation marks do not fit: `open` where the mark that opens it is never closed, `early` where
 * there is text behind the one that closes it. Line and column are those of the cell.
 */
export interface QuoteFault {
  readonly kind: "open" | "early";
  readonly line: number;
  readonly column: number;
  /** The cell as it stands in the text, marks and all. */
  readonly written: string;
}

/** What stands in a delimited text, line by line, and where its quotation marks do not fit. */
export interface DelimitedText {
  readonly rows: readonly Row[];
  readonly quoteFaults: readonly QuoteFault[];
}

/** The characters that may part the cells of a line. */
export type Separator = "," | ";" | "\t";

/** What counts as a line of the table. */
export interface DelimitedTextOptions {
  /** Whether a line that begins with `#` is a remark (the default) or a line of cells like any other. */
  readonly remarks?: boolean | undefined;
}
