import { contains } from "@tapewise/intervals";
import type { ColumnRow } from "./column-row.ts";
import { weighEnds } from "./weigh-ends.ts";

/** How every size fits one person: the probabilities multiply, for the beliefs are independent, and the misfits add. */
export function judgeRow(row: ColumnRow): void {
  const { plan, means, sds, probabilities, misfits, scratch } = row;
  const { lower, upper, intervals } = plan.tables;
  const { below, above, shortBelow, shortAbove, inside } = scratch;
  const dimensions = plan.dimensions.length;
  for (let dimension = 0; dimension < dimensions; dimension += 1) {
    if (sds[dimension] !== 0) weighEnds(row, dimension);
  }
  for (let size = 0; size < probabilities.length; size += 1) {
    let probability = 1;
    let misfit = 0;
    for (let dimension = 0; dimension < dimensions; dimension += 1) {
      const at = size * dimensions + dimension;
      const from = lower[at] as number;
      if (from < 0) {
        inside[at] = 1;
        continue;
      }
      const to = upper[at] as number;
      let share: number;
      if (sds[dimension] === 0) {
        const interval = intervals[at];
        const mean = means[dimension] as number;
        share = interval !== undefined && contains(interval, mean) ? 1 : 0;
        misfit += Math.max(0, (interval?.from ?? mean) - mean, mean - (interval?.to ?? mean));
      } else {
        share = between(from, to, below, above);
        misfit +=
          (from === 0 ? 0 : (shortBelow[from] as number)) + (to === 1 ? 0 : (shortAbove[to] as number));
      }
      inside[at] = share;
      probability *= share;
    }
    probabilities[size] = probability;
    misfits[size] = misfit;
  }
}

/** The chance between two ends, from the tails that are nearer, so that it keeps its digits. */
function between(from: number, to: number, below: Float64Array, above: Float64Array): number {
  if (from === 0) return below[to] as number;
  if (to === 1) return above[from] as number;
  if ((above[from] as number) <= 0.5) return (above[from] as number) - (above[to] as number);
  if ((below[to] as number) <= 0.5) return (below[to] as number) - (below[from] as number);
  return 0.5 - (above[to] as number) + (0.5 - (below[from] as number));
}
