/**
 * The word of a list that a mistyped one most likely stands for, if any comes near: at most a third of
 * its letters may be wrong (optimal string alignment distance: insert, drop, change, swap neighbours).
 */
export function closest(word: string, candidates: readonly string[]): string | undefined {
  // A long text is no slip of the fingers, and would be slow to compare.
  if (word.length > 40) return undefined;
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    const steps = distance(plain(word), plain(candidate));
    if (steps <= Math.max(1, candidate.length / 3) && steps < least) {
      best = candidate;
      least = steps;
    }
  }
  return best;
}

/** `measured_by`, `Measured By` and `measuredBy` are the same slip. */
function plain(word: string): string {
  return word.toLowerCase().replace(/[\s_-]/g, "");
}

function distance(left: string, right: string): number {
  const width = right.length + 1;
  const cells = new Uint16Array((left.length + 1) * width);
  const at = (row: number, column: number): number => cells[row * width + column] ?? 0;
  for (let row = 0; row <= left.length; row++) {
    for (let column = 0; column <= right.length; column++) {
      if (row === 0 || column === 0) {
        cells[row * width + column] = row + column;
        continue;
      }
      const same = left[row - 1] === right[column - 1];
      let steps = Math.min(
        at(row - 1, column) + 1,
        at(row, column - 1) + 1,
        at(row - 1, column - 1) + (same ? 0 : 1),
      );
      const swapped = left[row - 1] === right[column - 2] && left[row - 2] === right[column - 1];
      if (row > 1 && column > 1 && swapped) steps = Math.min(steps, at(row - 2, column - 2) + 1);
      cells[row * width + column] = steps;
    }
  }
  return at(left.length, right.length);
}
