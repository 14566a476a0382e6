import type { Study } from "../study/study.ts";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";

/** A cell of the grid that holds readings. */
export interface RemlCell {
  /** Position of its subject and of its measurer among those with readings. */
  readonly subject: number;
  readonly measurer: number;
  readonly count: number;
  /** Mean of its readings, less `centre`. */
  readonly mean: number;
}

/** All that the likelihood needs of a study: cell means are sufficient for it, with the squares about them. */
export interface RemlCells {
  readonly cells: readonly RemlCell[];
  readonly subjects: number;
  readonly measurers: number;
  readonly readings: number;
  /** What was taken off all readings, so that digits they share cost nothing. */
  readonly centre: number;
  /** Sum of squares of readings about the means of their cells. */
  readonly squaresWithin: number;
  /** Sum of squares of readings about their mean. */
  readonly squares: number;
  /** Unconnected parts of the grid: subjects and measurers joined by cells with readings. */
  readonly parts: number;
  /** For each measurer the part, by a number of its own. */
  readonly partOf: readonly number[];
}

/** Gathers a study's readings by cell. Subjects and measurers without a reading are left out. */
export function gatherCells(study: Study): RemlCells {
  const centre = study.readings.length === 0 ? 0 : compensatedMean(study.readings.map(({ mm }) => mm));
  const subjects = positions(study.subjects, new Set(study.readings.map(({ subject }) => subject)));
  const measurers = positions(study.measurers, new Set(study.readings.map(({ measurer }) => measurer)));
  const byCell = new Map<number, number[]>();
  for (const { subject, measurer, mm } of study.readings) {
    const key = (subjects.get(subject) ?? 0) * measurers.size + (measurers.get(measurer) ?? 0);
    const values = byCell.get(key);
    if (values === undefined) byCell.set(key, [mm - centre]);
    else values.push(mm - centre);
  }
  const entries = [...byCell].sort(([a], [b]) => a - b);
  const cells = entries.map(([key, values]) => ({
    subject: Math.floor(key / measurers.size),
    measurer: key % measurers.size,
    count: values.length,
    mean: compensatedMean(values),
  }));
  return {
    cells,
    subjects: subjects.size,
    measurers: measurers.size,
    readings: study.readings.length,
    centre,
    squaresWithin: compensatedSum(
      entries.flatMap(([, values], i) => values.map((value) => (value - (cells[i]?.mean ?? 0)) ** 2)),
    ),
    squares: compensatedSum(study.readings.map(({ mm }) => (mm - centre) ** 2)),
    ...findParts(cells, subjects.size, measurers.size),
  };
}

function positions(names: readonly string[], present: ReadonlySet<string>): ReadonlyMap<string, number> {
  return new Map(names.filter((name) => present.has(name)).map((name, i) => [name, i]));
}

/** Joins subjects and measurers cell by cell and sees what stays apart. */
function findParts(
  cells: readonly RemlCell[],
  subjects: number,
  measurers: number,
): Pick<RemlCells, "parts" | "partOf"> {
  const leader = Array.from({ length: subjects + measurers }, (_, i) => i);
  const find = (start: number): number => {
    let at = start;
    while (leader[at] !== at) at = leader[at] ?? at;
    return at;
  };
  for (const { subject, measurer } of cells) leader[find(subject)] = find(subjects + measurer);
  return {
    parts: leader.filter((own, i) => own === i).length,
    partOf: Array.from({ length: measurers }, (_, m) => find(subjects + m)),
  };
}
