import type { DimensionId } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { requireLength } from "../require-argument.ts";
import { MOST_CELLS } from "./data.ts";
import type { MissingCell, SetAsideReading, Study, StudyCell, StudyReading } from "./study.ts";

/** What a study is made of. */
export interface StudyParts {
  readonly dimension?: DimensionId | undefined;
  readonly readings: readonly StudyReading[];
  /** Cells known to be empty. Cells of the grid that are in none of the lists are added as `not-in-data`. */
  readonly missing?: readonly MissingCell[];
  readonly setAside?: readonly SetAsideReading[];
  /** Names to put first, in this order; others follow in the order of their first mention. */
  readonly subjects?: readonly string[];
  readonly measurers?: readonly string[];
}

/**
 * Makes a study of readings that are lengths already, and finds the cells that are missing.
 *
 * @throws {@link InvalidArgumentError} when a length is not above 0 mm, a repeat is not a whole number from
 * 1 on, two entries that are not set aside are for the same cell, or the grid has more than a million cells.
 *
 * @example
 * ```ts
 * import { createStudy } from "@tapewise/measurement";
 * import { millimetres } from "@tapewise/units";
 * const study = createStudy({
 *   readings: [
 *     { subject: "s1", measurer: "Ann", repeat: 1, mm: millimetres(432) },
 *     { subject: "s1", measurer: "Ben", repeat: 1, mm: millimetres(435) },
 *     { subject: "s2", measurer: "Ann", repeat: 1, mm: millimetres(470) },
 *   ],
 * });
 * study.missing; // => [{ subject: "s2", measurer: "Ben", repeat: 1, because: "not-in-data" }]
 * ```
 */
export function createStudy(parts: StudyParts): Study {
  const { readings, missing = [], setAside = [] } = parts;
  const subjects = new Set(parts.subjects);
  const measurers = new Set(parts.measurers);
  const taken = new Set<string>();
  let repeats = 0;
  const once = readings.length + missing.length;
  for (const [index, cell] of [...readings, ...missing, ...setAside].entries()) {
    if (!(Number.isSafeInteger(cell.repeat) && cell.repeat >= 1)) {
      throw new InvalidArgumentError("repeat", cell.repeat, "a whole number from 1 on");
    }
    const key = cellKey(cell);
    if (index < once && taken.has(key)) {
      throw new InvalidArgumentError("readings", key, "one entry for each cell");
    }
    taken.add(key);
    subjects.add(cell.subject);
    measurers.add(cell.measurer);
    repeats = Math.max(repeats, cell.repeat);
  }
  for (const { mm } of [...readings, ...setAside]) requireLength("mm", mm);
  const cells = subjects.size * measurers.size * repeats;
  if (cells > MOST_CELLS)
    throw new InvalidArgumentError("readings", cells, `a grid of ${MOST_CELLS} cells at most`);
  const absent: MissingCell[] = [];
  for (const subject of subjects) {
    for (const measurer of measurers) {
      for (let repeat = 1; repeat <= repeats; repeat++) {
        const cell = { subject, measurer, repeat };
        if (!taken.has(cellKey(cell))) absent.push({ ...cell, because: "not-in-data" });
      }
    }
  }
  return {
    ...(parts.dimension === undefined ? {} : { dimension: parts.dimension }),
    subjects: [...subjects],
    measurers: [...measurers],
    repeats,
    readings,
    missing: [...missing, ...absent],
    setAside,
  };
}

/** A text that is the same for entries of the same cell only. */
function cellKey({ subject, measurer, repeat }: StudyCell): string {
  return JSON.stringify([subject, measurer, repeat]);
}
