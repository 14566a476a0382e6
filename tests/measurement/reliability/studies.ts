import { createStudy, type Study } from "@tapewise/measurement";
import { millimetres } from "@tapewise/units";

/** A study of rows of cells, each a list of repeats; `undefined` and an empty list stand for a missing cell. */
export function studyOf(
  rows: readonly (readonly (number | readonly number[] | undefined)[])[],
  measurers: readonly string[] = ["Ann", "Ben", "Cat", "Dan", "Eve"],
): Study {
  return createStudy({
    readings: rows.flatMap((row, s) =>
      row.flatMap((cell, m) =>
        (cell === undefined ? [] : [cell].flat()).map((mm, i) => ({
          subject: `s${s + 1}`,
          measurer: measurers[m] ?? `m${m}`,
          repeat: i + 1,
          mm: millimetres(mm),
        })),
      ),
    ),
    subjects: rows.map((_, s) => `s${s + 1}`),
    measurers: measurers.slice(0, Math.max(...rows.map((row) => row.length))),
  });
}
