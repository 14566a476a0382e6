/**
 * How many slips of the finger lie between two words: characters put in, left out, changed, or two
 * neighbours swapped (optimal string alignment distance; Damerau 1964 named the four slips).
 *
 * Time and memory grow with the product of the lengths, so compare words, not texts.
 *
 * @example
 * ```ts
 * import { editDistance } from "@tapewise/outcome";
 * editDistance("taep", "tape"); // => 1
 * editDistance("inch", "inches"); // => 2
 * ```
 */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + change);
      // Before the first character there is none, so the first of either word is swapped with nothing.
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) best = Math.min(best, at(beforeLast, j - 2) + 1);
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return at(last, b.length);
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Number.POSITIVE_INFINITY;
}
