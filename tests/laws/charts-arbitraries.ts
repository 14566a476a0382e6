import { fc } from "@fast-check/vitest";

/** Bounds of one size in whole centimetres. */
export interface Bounds {
  readonly from: number;
  readonly to: number;
}

/** A size as a law has it: a name that no rank is known for, and a range or a nominal length, in whole centimetres. */
export interface Row {
  readonly name: string;
  readonly range: Bounds | undefined;
  readonly nominal: number | undefined;
}

const bounds = fc
  .tuple(fc.integer({ min: 30, max: 60 }), fc.integer({ min: 0, max: 15 }))
  .map(([from, width]): Bounds => ({ from, to: from + width }));

/** Sizes with ranges only. */
export const rangeRows: fc.Arbitrary<readonly Row[]> = fc
  .array(bounds, { minLength: 1, maxLength: 8 })
  .map((all) => all.map((range, position) => ({ name: `Z${position}`, range, nominal: undefined })));

/** Sizes with ranges and nominal lengths, at least two of them ranges. */
export const mixedRows: fc.Arbitrary<readonly Row[]> = fc
  .tuple(
    fc.array(bounds, { minLength: 2, maxLength: 5 }),
    fc.array(fc.integer({ min: 30, max: 75 }), { maxLength: 4 }),
  )
  .chain(([ranges, nominals]) =>
    fc.shuffledSubarray(
      [
        ...ranges.map((range) => ({ range, nominal: undefined })),
        ...nominals.map((nominal) => ({ range: undefined, nominal })),
      ],
      { minLength: ranges.length + nominals.length },
    ),
  )
  .map((rows) => rows.map((row, position) => ({ ...row, name: `Z${position}` })));

/** Ranges that meet end to end, in any order. */
export const tilingRows: fc.Arbitrary<readonly Row[]> = fc
  .tuple(
    fc.integer({ min: 30, max: 35 }),
    fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 5 }),
  )
  .map(([start, widths]) => {
    let at = start;
    return widths.map((width, position): Row => {
      const from = at;
      at += width;
      return { name: `Z${position}`, range: { from, to: at }, nominal: undefined };
    });
  })
  .chain((rows) => fc.shuffledSubarray(rows, { minLength: rows.length }));

/** The cell of a size, in centimetres. */
export function cellOf({ range, nominal }: Row, dash = "-"): string {
  if (range !== undefined) return `${range.from}${dash}${range.to}`;
  return nominal === undefined ? "" : String(nominal);
}

/** The rows as a table. */
export function tableOf(rows: readonly Row[], separator = ",", dash = "-"): string {
  const lines = rows.map((row) => `${row.name}${separator}${cellOf(row, dash)}`);
  return [`size${separator}torso-length (cm)`, ...lines].join("\n");
}
