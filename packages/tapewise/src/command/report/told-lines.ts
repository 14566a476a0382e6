import type { ToldTable } from "@tapewise/measurement";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";

const LONGEST_WORD = 30;

/** A table as aligned lines: words to the left, numbers to the right. */
export function toldLines({ header, rows, wordColumns }: ToldTable): string[] {
  const cell = (text: string, column: number): string =>
    column < wordColumns ? shorten(cleanWord(text), LONGEST_WORD) : text;
  return table(
    header.map(cell),
    rows.map((row) => row.map(cell)),
    header.map((_, column) => (column < wordColumns ? "left" : "right")),
  );
}
