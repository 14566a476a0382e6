import type { ColumnRow } from "./column-row.ts";

/**
 * Lays out the sizes of one dimension for its looks: what is known of the other dimensions stays as it is. Whether
 * every other size lies wholly to one side of the pick: neither inside it nor around it. Then the chance of one
 * beside that of the pick rises (or falls) all along the line, because the normal density is totally
 * positive (S. Karlin 1968, "Total Positivity"), so that a pick that stands at one point stands all the way in.
 */
export function layOutSizes(row: ColumnRow, dimension: number): boolean {
  const { tables, dimensions } = row.plan;
  const { sides, others, lowers, uppers } = row.scratch;
  let isOrdered = !row.scratch.isHeld;
  for (let size = 0; size < others.length; size += 1) {
    const at = size * dimensions.length + dimension;
    const from = tables.lower[at] as number;
    // What states nothing has no ends.
    lowers[size] = tables.ends[Math.max(from, 0)] as number;
    uppers[size] = tables.ends[from < 0 ? 1 : (tables.upper[at] as number)] as number;
    others[size] = othersOf(row, size, dimension);
    sides[size] = sideOf(row, size, dimension);
    if (sides[size] === AROUND && (others[size] as number) > 0) isOrdered = false;
  }
  return isOrdered;
}

/** The most that any other size could come to, whatever is read of this dimension: no look gains more. */
export function mostElsewhere({ pick, scratch }: ColumnRow): number {
  let most = 0;
  for (let size = 0; size < scratch.others.length; size += 1) {
    const chance = scratch.others[size] as number;
    if (size !== pick && chance > most) most = chance;
  }
  return most;
}

/** Where a size lies beside the pick: wholly on one side, or neither. */
export const BELOW = 0;
export const ABOVE = 1;
export const AROUND = 2;

function sideOf({ plan, pick }: ColumnRow, size: number, dimension: number): number {
  const { lower, upper, ends } = plan.tables;
  const count = plan.dimensions.length;
  const [own, theirs] = [pick * count + dimension, size * count + dimension];
  if (own === theirs) return ABOVE;
  if ((lower[own] as number) < 0 || (lower[theirs] as number) < 0) return AROUND;
  const from = (ends[lower[theirs] as number] as number) - (ends[lower[own] as number] as number);
  const to = (ends[upper[theirs] as number] as number) - (ends[upper[own] as number] as number);
  // The difference of two open ends is no number, and they are the same.
  const [isUp, isDown] = [!(from < 0) && !(to < 0), !(from > 0) && !(to > 0)];
  return isUp ? ABOVE : isDown ? BELOW : AROUND;
}

/** The probability that all other dimensions fit. */
function othersOf({ plan, probabilities, scratch }: ColumnRow, size: number, dimension: number): number {
  const own = scratch.inside[size * plan.dimensions.length + dimension] as number;
  return own > 0 ? Math.min(1, (probabilities[size] as number) / own) : 0;
}
