/** A cell with the place of its first character; line and column count from 1. */
export interface Cell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/** The characters that may part the cells of a line. */
export type Separator = "," | ";" | "\t";

export interface DelimitedText {
  /** Lines with at least one cell that is not empty. */
  readonly rows: readonly (readonly Cell[])[];
  /** Where a quotation mark opens a cell that never ends; reading stops there. */
  readonly openQuote?: { readonly line: number; readonly column: number };
}

/** The separator that the first line holds most often; a comma where it holds none. */
export function detectSeparator(text: string): Separator {
  const [header = ""] = text.trimStart().split(/\r\n|\n|\r/, 1);
  const plain = header.replace(/"[^"]*"/g, "");
  const count = (separator: Separator): number => plain.split(separator).length;
  const candidates: readonly Separator[] = [",", ";", "\t"];
  return candidates.reduce((best, each) => (count(each) > count(best) ? each : best));
}

/** Cells of comma, semicolon or tab separated text after RFC 4180, with any kind of line end. */
export function readDelimited(text: string, separator: Separator): DelimitedText {
  const rows: Cell[][] = [];
  let row: Cell[] = [];
  let at = text.startsWith("\uFEFF") ? 1 : 0;
  let line = 1;
  let lineStart = at;
  const finishRow = (): void => {
    if (row.some((cell) => cell.text.trim() !== "")) rows.push(row);
    row = [];
  };
  while (at < text.length) {
    const place = { line, column: at - lineStart + 1 };
    let content: string;
    if (text[at] === '"') {
      const end = closingQuote(text, at + 1);
      if (end === -1) return { rows, openQuote: place };
      content = text.slice(at + 1, end).replaceAll('""', '"');
      for (const { index, 0: lineEnd } of text.slice(at, end).matchAll(/\r\n|\n|\r/g)) {
        line += 1;
        lineStart = at + index + lineEnd.length;
      }
      at = end + 1;
    } else {
      content = "";
    }
    let end = at;
    while (end < text.length && text[end] !== separator && text[end] !== "\n" && text[end] !== "\r") end += 1;
    const rest = text.slice(at, end);
    // What follows the closing mark belongs to no cell: the marks stay, so that it is not read as a value.
    row.push({
      text: content !== "" && rest.trim() !== "" ? `"${content}"${rest}` : content + rest,
      ...place,
    });
    at = end;
    if (text[at] === separator) {
      at += 1;
      // A separator at the very end leaves an empty cell behind it.
      if (at === text.length) row.push({ text: "", line, column: at - lineStart + 1 });
      continue;
    }
    at += text[at] === "\r" && text[at + 1] === "\n" ? 2 : 1;
    line += 1;
    lineStart = at;
    finishRow();
  }
  finishRow();
  return { rows };
}

/** The quotation mark that closes a cell; a doubled one stands for itself. −1 when there is none. */
function closingQuote(text: string, start: number): number {
  let at = text.indexOf('"', start);
  while (at !== -1 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at;
}
