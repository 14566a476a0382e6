import type { Study } from "../study/study.ts";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";

/** The readings of one subject by one measurer. */
export interface StudyCellMean {
  readonly subject: string;
  readonly measurer: string;
  readonly count: number;
  readonly meanMm: number;
  /** Sum of squares of the readings about their mean, in mm². */
  readonly squares: number;
}

/** Every pair of subject and measurer with a reading, in the order of the study. */
export function cellMeans(study: Study): readonly StudyCellMean[] {
  const cells = new Map<
    string,
    { readonly subject: string; readonly measurer: string; readonly values: number[] }
  >();
  for (const { subject, measurer, mm } of study.readings) {
    const key = JSON.stringify([subject, measurer]);
    const cell = cells.get(key);
    if (cell === undefined) cells.set(key, { subject, measurer, values: [mm] });
    else cell.values.push(mm);
  }
  return [...cells.values()].map(({ subject, measurer, values }) => {
    const meanMm = compensatedMean(values);
    const squares = compensatedSum(values.map((value) => (value - meanMm) ** 2));
    return { subject, measurer, count: values.length, meanMm, squares };
  });
}

/** Things by a name of theirs, in the order of their first mention. */
export function groupBy<T>(
  items: readonly T[],
  nameOf: (item: T) => string,
): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(nameOf(item));
    if (group === undefined) groups.set(nameOf(item), [item]);
    else group.push(item);
  }
  return groups;
}
