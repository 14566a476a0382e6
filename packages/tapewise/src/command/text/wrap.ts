import { displayWidth } from "./display-width.ts";

/** How lines are set: `first` stands before the first line, `rest` before the others. */
export interface Indent {
  readonly first: string;
  readonly rest: string;
}

/** Every line of the command fits into this many cells, as far as single words allow. */
export const PAGE_WIDTH = 80;

/** Breaks a text at its spaces into lines of at most `width` cells, indents included. */
export function wrap(
  text: string,
  indent: Indent = { first: "", rest: "" },
  width: number = PAGE_WIDTH,
): string[] {
  const lines: string[] = [];
  let line = indent.first;
  let empty = true;
  for (const word of text.split(/\s+/).filter((part) => part !== "")) {
    if (!empty && displayWidth(line) + 1 + displayWidth(word) > width) {
      lines.push(line);
      line = indent.rest;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  lines.push(line);
  return lines;
}

/** Paragraphs of a list, each with a dash. */
export function bullets(texts: readonly string[], margin = "  ", width: number = PAGE_WIDTH): string[] {
  return texts.flatMap((text) => wrap(text, { first: `${margin}- `, rest: `${margin}  ` }, width));
}
