import { InvalidArgumentError } from "@tapewise/outcome";
import type { Cell, DelimitedText, DelimitedTextOptions, QuoteFault, Row, Separator } from "./table-rows.ts";

interface Cursor {
  readonly text: string;
  readonly separator: Separator;
  readonly remarks: boolean;
  readonly quoteFaults: QuoteFault[];
  position: number;
  line: number;
  lineStart: number;
  /** The end of the line that was last searched for its end. */
  lineEnd: number;
  /** Once a quotation mark was found to be open up to the end, later ones are closed on their own line or not at all. */
  openQuoteSeen: boolean;
}

/**
 * Reads comma, semicolon or tab separated text after RFC 4180, with every cell's place.
 *
 * More is allowed than there: any kind of line end, lines of unequal length, quotation marks inside
 * an unquoted cell (an inch sign), blank lines and `#` lines. A quotation mark without its partner is
 * reported and passed over, so that its cell and the rest of the file stay readable; whoever wants no value
 * out of such a cell finds it by the place of its fault. A byte order mark at the start counts for nothing.
 * Linear in the length.
 *
 * @throws {@link InvalidArgumentError} when the separator is none of the three.
 *
 * @example
 * ```ts
 * import { readDelimitedText } from "@tapewise/tables";
 * const { rows } = readDelimitedText("size;torso\nS;38,5", ";");
 * const [, row] = rows;
 * row?.kind === "cells" && row.cells[1]; // => { text: "38,5", line: 2, column: 3 }
 * ```
 */
export function readDelimitedText(
  text: string,
  separator: Separator,
  options: DelimitedTextOptions = {},
): DelimitedText {
  if (separator !== "," && separator !== ";" && separator !== "\t") {
    throw new InvalidArgumentError("separator", separator, "a comma, a semicolon or a tab");
  }
  const start = text.startsWith("\uFEFF") ? 1 : 0;
  const cursor: Cursor = {
    text,
    separator,
    remarks: options.remarks ?? true,
    quoteFaults: [],
    position: start,
    line: 1,
    lineStart: start,
    lineEnd: -1,
    openQuoteSeen: false,
  };
  const rows: Row[] = [];
  while (cursor.position < text.length) rows.push(readRow(cursor));
  return { rows, quoteFaults: cursor.quoteFaults };
}

function readRow(cursor: Cursor): Row {
  const { text } = cursor;
  const line = cursor.line;
  if (cursor.remarks && text[cursor.position] === "#") {
    const end = endOfLine(text, cursor.position);
    const remark = text.slice(cursor.position, end);
    cursor.position = end;
    passLineEnd(cursor);
    return { kind: "remark", line, text: remark };
  }
  const cells: Cell[] = [];
  for (;;) {
    cells.push(readCell(cursor));
    if (text[cursor.position] !== cursor.separator) break;
    cursor.position++;
  }
  passLineEnd(cursor);
  const [first] = cells;
  // Spreadsheets quote a remark that holds a comma.
  if (cursor.remarks && first !== undefined && /^#\s*\p{L}+\s*:/u.test(first.text)) {
    return { kind: "remark", line, text: first.text };
  }
  return cells.every((cell) => cell.text.trim() === "")
    ? { kind: "blank", line }
    : { kind: "cells", line, cells };
}

function readCell(cursor: Cursor): Cell {
  const { text } = cursor;
  const line = cursor.line;
  const column = cursor.position - cursor.lineStart + 1;
  if (text[cursor.position] !== '"') return { text: readPlain(cursor), line, column };

  // Kept, because a line of many quoted cells would otherwise be searched to its end for each of them.
  if (cursor.lineEnd < cursor.position) cursor.lineEnd = endOfLine(text, cursor.position);
  const { lineEnd } = cursor;
  const close = closingQuote(text, cursor.position + 1, cursor.openQuoteSeen ? lineEnd : text.length);
  // A mark that closes lines below, in the middle of a cell, opens that cell: this one was never closed.
  if (close === -1 || (close > lineEnd && !endsCell(cursor, close + 1))) {
    cursor.openQuoteSeen = true;
    cursor.position++;
    const plain = readPlain(cursor);
    cursor.quoteFaults.push({ kind: "open", line, column, written: `"${plain}` });
    return { text: plain, line, column };
  }
  const opened = cursor.position;
  const quoted = text.slice(opened + 1, close).replaceAll('""', '"');
  countLines(cursor, cursor.position, close);
  cursor.position = close + 1;
  const rest = readPlain(cursor);
  if (rest.trim() !== "") {
    const written = text.slice(opened, cursor.position);
    cursor.quoteFaults.push({ kind: "early", line, column, written });
  }
  return { text: quoted + rest, line, column };
}

/** The rest of an unquoted cell: up to the separator or the end of the line. */
function readPlain(cursor: Cursor): string {
  const { text, separator } = cursor;
  const start = cursor.position;
  let end = start;
  while (end < text.length && text[end] !== separator && text[end] !== "\n" && text[end] !== "\r") end++;
  cursor.position = end;
  return text.slice(start, end);
}

/** The quotation mark that closes a cell; a doubled one stands for itself. -1 when there is none. */
function closingQuote(text: string, start: number, limit: number): number {
  let at = text.indexOf('"', start);
  while (at !== -1 && at < limit) {
    if (text[at + 1] !== '"') return at;
    at = text.indexOf('"', at + 2);
  }
  return -1;
}

function endsCell(cursor: Cursor, position: number): boolean {
  const { text, separator } = cursor;
  let at = position;
  while (text[at] === " ") at++;
  const next = text[at];
  return next === undefined || next === separator || next === "\n" || next === "\r";
}

function endOfLine(text: string, start: number): number {
  let end = start;
  while (end < text.length && text[end] !== "\n" && text[end] !== "\r") end++;
  return end;
}

function passLineEnd(cursor: Cursor): void {
  const { text } = cursor;
  if (cursor.position >= text.length) return;
  cursor.position += text[cursor.position] === "\r" && text[cursor.position + 1] === "\n" ? 2 : 1;
  cursor.line++;
  cursor.lineStart = cursor.position;
}

/** Counts the line ends inside a quoted cell. */
function countLines(cursor: Cursor, start: number, end: number): void {
  for (let at = start; at < end; at++) {
    const char = cursor.text[at];
    if (char !== "\n" && char !== "\r") continue;
    if (char === "\r" && cursor.text[at + 1] === "\n") at++;
    cursor.line++;
    cursor.lineStart = at + 1;
  }
}
