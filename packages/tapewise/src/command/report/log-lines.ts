import type { OutcomeRow } from "@tapewise/afterwards";
import type { ProductCount } from "../log/count-outcomes.ts";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";

/** What a log holds: its rows, products and sizes. */
export function logLines(
  file: string,
  rows: readonly OutcomeRow[],
  products: readonly ProductCount[],
): string[] {
  const people = new Set(rows.flatMap(({ person }) => (person === undefined ? [] : [person])));
  const nameless = rows.filter(({ person }) => person === undefined).length;
  const without = nameless === 0 ? "" : `, and ${nameless} without a pseudonym, which cannot be forgotten`;
  const sorted = rows.map(({ at }) => at.slice(0, 10)).toSorted();
  const [first, last] = [sorted[0], sorted.at(-1)];
  const when = first === undefined ? "" : first === last ? `, of ${first}` : `, from ${first} to ${last}`;
  return [
    ...wrap(
      `${cleanWord(file)}: ${counted(rows.length, "outcome", "outcomes")} of ${counted(people.size, "person", "people")}${without}${when}.`,
    ),
    ...products.flatMap(({ chart, sizes }) => [
      "",
      ...wrap(cleanWord(chart)),
      ...table(
        ["size", "kept", "exchanged", "because"],
        sizes.map(({ size, kept, exchanged, reasons }) => [
          shorten(cleanWord(size), 12),
          String(kept),
          String(exchanged),
          Object.entries(reasons)
            .map(([reason, count]) => `${count} ${reason}`)
            .join(", "),
        ]),
        ["left", "right", "right", "left"],
      ),
    ]),
  ];
}

/** "1 outcome", "2 outcomes" */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
