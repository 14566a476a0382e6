/** How far our figures agree with those of one source, as one test file found it. */
export interface Agreement {
  /** The test file, from `reference-checks/`. */
  readonly file: string;
  /** What was called, as `package.function`. */
  readonly functions: readonly string[];
  readonly source: string;
  readonly origin: string;
  /** Why the tolerance is what it is. */
  readonly why: string;
  /** Values compared: with a tolerance, as printed, and for being the same. */
  readonly values: number;
  readonly same: number;
  /** The fewest digits, −log₁₀ of the relative error, at most 17; of what was compared relatively. */
  readonly digits?: number;
  /** The largest relative tolerance. */
  readonly relative?: number;
  /** The largest absolute error and tolerance, of what was compared absolutely. */
  readonly off?: number;
  readonly absolute?: number;
  /** The fewest significant digits of what was compared as printed. */
  readonly printed?: number;
}

/** Where a reference value comes from, as it begins. */
export const origins = [
  "printed",
  "certified",
  "recomputed",
  "worked by hand",
  "counted",
  "computed by",
  "common practice, no source",
] as const;

/** No double tells more digits than these apart. */
export const MOST_DIGITS = 17;

/** The digits of `actual` that agree with `expected`: −log₁₀ of the relative error. */
export function digitsOf(actual: number, expected: number): number {
  if (actual === expected) return MOST_DIGITS;
  const error = Math.abs(actual - expected) / Math.abs(expected);
  return Number.isFinite(error) ? Math.min(MOST_DIGITS, -Math.log10(error)) : 0;
}

/** The significant digits of a printed figure. */
export function printedDigits(text: string): number {
  const [mantissa = ""] = text.split(/e/i);
  return mantissa.replace(/[^0-9]/g, "").replace(/^0+(?=\d)/, "").length;
}

const sameRow = (a: Agreement, b: Agreement): boolean =>
  a.file === b.file &&
  a.functions.join() === b.functions.join() &&
  a.source === b.source &&
  a.origin === b.origin &&
  a.why === b.why;

const most = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined ? b : b === undefined ? a : Math.max(a, b);
const least = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined ? b : b === undefined ? a : Math.min(a, b);
const given = <K extends string>(key: K, value: number | undefined): Partial<Record<K, number>> =>
  value === undefined ? {} : ({ [key]: value } as Record<K, number>);

/** Rows of the same functions and source in one. */
export function mergeAgreements(rows: readonly Agreement[]): readonly Agreement[] {
  const merged: Agreement[] = [];
  for (const row of rows) {
    const index = merged.findIndex((other) => sameRow(row, other));
    const other = merged[index];
    if (other === undefined) merged.push(row);
    else {
      const { file, functions, source, origin, why } = row;
      merged[index] = {
        file,
        functions,
        source,
        origin,
        why,
        values: row.values + other.values,
        same: row.same + other.same,
        ...given("digits", least(row.digits, other.digits)),
        ...given("relative", most(row.relative, other.relative)),
        ...given("off", most(row.off, other.off)),
        ...given("absolute", most(row.absolute, other.absolute)),
        ...given("printed", least(row.printed, other.printed)),
      };
    }
  }
  return merged;
}
