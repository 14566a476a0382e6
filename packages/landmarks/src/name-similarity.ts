import { editDistance } from "@tapewise/outcome";

/**
 * How alike two short keys are, from 0 (nothing in common) to 1 (equal): the larger of the
 * Sørensen–Dice coefficient of their sets of letter pairs, which forgives another order of words, and of
 * edit distance with swaps as a share of the longer key, which forgives slips of the finger.
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
