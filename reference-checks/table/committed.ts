import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Agreement } from "./agreement.ts";

/** The committed figures that the table is written from: a row a line. */
export const agreementsFile: string = join(import.meta.dirname, "agreements.jsonl");

export function readAgreements(): readonly Agreement[] {
  return readFileSync(agreementsFile, "utf8")
    .split("\n")
    .filter((line) => line !== "")
    .map((line): Agreement => JSON.parse(line));
}

/** Another engine's `Math` may cost a fraction of a digit. */
const SLACK_DIGITS = 0.5;

const keyOf = ({ functions, source, origin, why }: Agreement): string =>
  [functions.join(" "), source, origin, why].join(" | ");

/** What the committed table says otherwise than one file's run found. */
export function differencesFrom(
  committed: readonly Agreement[],
  file: string,
  found: readonly Agreement[],
): readonly string[] {
  const known = committed.filter((row) => row.file === file);
  const gone = known.filter((row) => !found.some((other) => keyOf(other) === keyOf(row)));
  return [
    ...gone.map((row) => `${keyOf(row)}: in the table, but not found`),
    ...found.flatMap((row) => {
      const told = known.find((other) => keyOf(other) === keyOf(row));
      if (told === undefined) return [`${keyOf(row)}: not in the table`];
      const same =
        told.values === row.values &&
        told.same === row.same &&
        told.printed === row.printed &&
        (told.digits ?? 0) - (row.digits ?? 0) <= SLACK_DIGITS;
      return same
        ? []
        : [`${keyOf(row)}: the table has ${JSON.stringify(told)}, found ${JSON.stringify(row)}`];
    }),
  ];
}
