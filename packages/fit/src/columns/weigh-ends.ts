import { studentTPdf, studentTUpperTail } from "@tapewise/statistics";
import type { ColumnRow } from "./column-row.ts";
import { FARTHEST, readNormal } from "./normal-table.ts";
import { FEWEST_DEGREES, readStudent } from "./student-table.ts";

/**
 * The chances that a length lies below and above every end of one dimension, and the distances to expect there:
 * with z the distance in units of s, E[max(0, end − X)] is s (z F(z) + f(z)), and s (z F(z) + f(z) (ν + z²)/(ν − 1)) for
 * Student's t. Every end is weighed once, however many ranges it bounds.
 */
export function weighEnds(row: ColumnRow, dimension: number): void {
  const { ends, starts, normal, student } = row.plan.tables;
  const { below, above, shortBelow, shortAbove, pair } = row.scratch;
  const mean = row.means[dimension] as number;
  const sd = row.sds[dimension] as number;
  const degrees = row.degrees[dimension] as number;
  const isNormal = degrees === Number.POSITIVE_INFINITY;
  const isTabled = !isNormal && degrees >= FEWEST_DEGREES;
  const height = isTabled ? studentTPdf(0, degrees) : 0;
  const stop = starts[dimension + 1] as number;
  for (let end = starts[dimension] as number; end < stop; end += 1) {
    const z = ((ends[end] as number) - mean) / sd;
    const size = Math.abs(z);
    let stretch = 1;
    if (isNormal) {
      if (size < FARTHEST) readNormal(normal, size, pair);
      else pair.fill(0);
    } else {
      stretch = (degrees + z * z) / (degrees - 1);
      if (isTabled) readStudent(student, size, degrees, height, pair);
      else weighExactly(size, degrees, pair);
    }
    const tail = pair[0] as number;
    const rest = sd * Math.max(0, (pair[1] as number) * stretch - size * tail);
    if (z > 0) {
      below[end] = 1 - tail;
      above[end] = tail;
      shortAbove[end] = rest;
      shortBelow[end] = rest + sd * size;
    } else {
      below[end] = tail;
      above[end] = 1 - tail;
      shortBelow[end] = rest;
      shortAbove[end] = rest + sd * size;
    }
  }
}

/** So many scales out squares are no longer finite, and nothing is left of a tail. */
const FAR = 1e100;

function weighExactly(size: number, degrees: number, out: Float64Array): void {
  out[0] = size < FAR ? studentTUpperTail(size, degrees) : 0;
  out[1] = size < FAR ? studentTPdf(size, degrees) : 0;
}
