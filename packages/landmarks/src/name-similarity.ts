/**
 * How alike two short keys are, from 0 (nothing in common) to 1 (equal): the larger of the
 * Sørensen–Dice coefficient of their sets of letter pairs, which forgives another order of words, and of the
 * edit distance with swaps (optimal string alignment) as a share of the longer key, which forgives
 * slips of the finger.
 */
export function nameSimilarity(a: string, b: string): number {
  if (a === b) return 1;
  const longer = Math.max(a.length, b.length);
  return Math.max(diceCoefficient(a, b), 1 - editDistance(a, b) / longer);
}

function diceCoefficient(a: string, b: string): number {
  const pairsOfA = letterPairs(a);
  const pairsOfB = letterPairs(b);
  const shared = [...pairsOfA].filter((pair) => pairsOfB.has(pair)).length;
  const all = pairsOfA.size + pairsOfB.size;
  return all > 0 ? (2 * shared) / all : 0;
}

function letterPairs(text: string): Set<string> {
  return new Set(Array.from({ length: Math.max(0, text.length - 1) }, (_, i) => text.slice(i, i + 2)));
}

function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + change);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
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
