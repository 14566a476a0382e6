import { mkdirSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { afterAll, expect } from "vitest";
import { type Agreement, digitsOf, mergeAgreements, type origins, printedDigits } from "./agreement.ts";
import { differencesFrom, readAgreements } from "./committed.ts";

/** What our figures are held against. */
export interface Reference {
  /** The function that is checked, as `package.function`, or several that are checked together. */
  readonly of: string | readonly string[];
  readonly source: string;
  readonly origin: `${(typeof origins)[number]}${string}`;
  /** Why the tolerance is what it is. */
  readonly why: string;
}

/** Compares our figures with those of one source: fails the test when they differ, and keeps count for the table. */
export interface Against {
  /** Within a share of the expected value. An expected 0 must be met within the tolerance itself. */
  relative(actual: number | undefined, expected: string | number, tolerance: number): void;
  /** Within a distance. */
  absolute(actual: number | undefined, expected: string | number, tolerance: number): void;
  /** As printed: ours, rounded to the decimals that the source shows. */
  printed(actual: number | undefined, expected: string): void;
  /** Equal throughout. `count` is how many values that are. */
  same(actual: unknown, expected: unknown, count?: number): void;
}

const found: Agreement[] = [];

/** Starts the comparison with one source. To be called anywhere in a test file of the reference checks. */
export function against(reference: Reference): Against {
  const row = {
    file: "",
    functions: typeof reference.of === "string" ? [reference.of] : reference.of,
    source: reference.source,
    origin: reference.origin,
    why: reference.why,
  };
  const note = (more: Partial<Agreement>): void => {
    found.push({ ...row, values: 1, same: 0, ...more });
  };
  return {
    relative(actual = Number.NaN, expected, tolerance) {
      const wanted = Number(expected);
      const error = wanted === 0 ? Math.abs(actual) : Math.abs(actual - wanted) / Math.abs(wanted);
      expect(error, `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
      if (wanted === 0) note({ off: error, absolute: tolerance });
      else note({ digits: digitsOf(actual, wanted), relative: tolerance });
    },
    absolute(actual = Number.NaN, expected, tolerance) {
      const off = Math.abs(actual - Number(expected));
      expect(off, `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
      note({ off, absolute: tolerance });
    },
    printed(actual = Number.NaN, expected) {
      expect(actual.toFixed(expected.split(".")[1]?.length ?? 0)).toBe(expected);
      note({ printed: printedDigits(expected) });
    },
    same(actual, expected, count = 1) {
      expect(actual).toEqual(expected);
      note({ values: count, same: count });
    },
  };
}

interface Task {
  readonly mode: string;
  readonly tasks?: readonly Task[];
}
const ranWhole = (task: Task): boolean => task.mode !== "skip" && (task.tasks ?? []).every(ranWhole);

// Once every test of a file ran, what it found goes to the folder that the table is made of, or is held against the
// table as it is committed. A part of a file (`vitest -t`) tells nothing about the table.
// biome-ignore lint/correctness/noEmptyPattern: vitest asks for a pattern here.
afterAll(({}, suite) => {
  const file = basename("filepath" in suite ? suite.filepath : suite.file.filepath);
  if (!ranWhole(suite)) return;
  const rows = mergeAgreements(found.map((row) => ({ ...row, file })));
  const folder = process.env.TAPEWISE_AGREEMENTS;
  if (folder === undefined) {
    expect(differencesFrom(readAgreements(), file, rows), "npm run check:reference -- --write").toEqual([]);
  } else {
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, `${file}.json`), JSON.stringify(rows));
  }
});
