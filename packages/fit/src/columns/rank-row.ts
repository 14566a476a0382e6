import { CLOSE, reaches } from "./close-call.ts";
import type { ColumnRow } from "./column-row.ts";

const CLOSE_MM = 1e-11;

/** The best size and the best of the others. */
export function rankRow(row: ColumnRow): void {
  const { probabilities, misfits, plan, scratch } = row;
  const { fitSteps, misfitSteps } = scratch;
  for (let size = 0; size < probabilities.length; size += 1) {
    fitSteps[size] = Math.round((probabilities[size] as number) * 1e9);
    misfitSteps[size] = Math.round((misfits[size] as number) * 1e9);
    reaches(row, probabilities[size] as number, plan.policy.hopelessProbability);
  }
  let best = 0;
  let other = -1;
  for (let size = 1; size < probabilities.length; size += 1) {
    if (isBefore(row, size, best)) {
      other = best;
      best = size;
    } else if (other < 0 || isBefore(row, size, other)) other = size;
  }
  scratch.best = best;
  scratch.other = other;
}

/** Whether one size stands before another: fit, expected misfit, room, and the order of the ranges. */
export function isBefore(row: ColumnRow, a: number, b: number): boolean {
  const { probabilities, misfits, plan, scratch } = row;
  const { hopelessProbability } = plan.policy;
  const own = probabilities[a] as number;
  const theirs = probabilities[b] as number;
  const steps = scratch.fitSteps[a] as number;
  const otherSteps = scratch.fitSteps[b] as number;
  if (steps !== otherSteps && Math.abs(own - theirs) < CLOSE) row.isClose = true;
  const standing = own < hopelessProbability ? 0 : steps;
  const otherStanding = theirs < hopelessProbability ? 0 : otherSteps;
  if (standing !== otherStanding) return standing > otherStanding;
  const misfit = scratch.misfitSteps[a] as number;
  const otherMisfit = scratch.misfitSteps[b] as number;
  if (misfit !== otherMisfit) {
    if (Math.abs((misfits[a] as number) - (misfits[b] as number)) < CLOSE_MM) row.isClose = true;
    return misfit < otherMisfit;
  }
  if (steps !== otherSteps) return steps > otherSteps;
  const room = Math.round(roomIn(row, a) * 1e6);
  const otherRoom = Math.round(roomIn(row, b) * 1e6);
  if (room !== otherRoom) return room > otherRoom;
  return (plan.tables.order[a] as number) < (plan.tables.order[b] as number);
}

/** How far the main dimension lies inside a size, in mm; below 0 outside. */
export function roomIn({ plan, means }: ColumnRow, size: number): number {
  const { lower, upper, ends } = plan.tables;
  const at = size * plan.dimensions.length;
  const mean = means[0] as number;
  return Math.min(mean - (ends[lower[at] as number] as number), (ends[upper[at] as number] as number) - mean);
}
