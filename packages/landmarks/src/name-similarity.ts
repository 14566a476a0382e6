import { editDistance } from "@tapewise/outcome";

/** A name made ready to be held against others: its key and what is counted of it. */
export interface ComparableName {
  readonly key: string;
  /** Each pair of neighbouring letters, once. */
  readonly pairs: ReadonlySet<string>;
  /** How often it has each letter. */
  readonly letters: ReadonlyMap<string, number>;
}

/** Makes a key of `nameKey` ready to be held against others. */
export function comparableName(key: string): ComparableName {
  const pairs = new Set<string>();
  const letters = new Map<string, number>();
  for (let i = 0; i < key.length; i += 1) {
    const letter = key.charAt(i);
    letters.set(letter, (letters.get(letter) ?? 0) + 1);
    if (i > 0) pairs.add(key.slice(i - 1, i + 1));
  }
  return { key, pairs, letters };
}

/**
 * How alike two short names are, from 0 (nothing in common) to 1 (equal): the larger of the
 * Sørensen–Dice coefficient of their sets of letter pairs, which forgives another order of words, and of
 * edit distance with swaps as a share of the longer name, which forgives slips of the finger. Names that are less alike
 * than `least` may be said to be even less so: their edit distance, which takes most of the time, is not worked out.
 */
export function nameSimilarity(a: ComparableName, b: ComparableName, least: number): number {
  if (a.key === b.key) return 1;
  const longer = Math.max(a.key.length, b.key.length);
  const dice = diceCoefficient(a.pairs, b.pairs);
  const needed = Math.max(least, dice);
  // Every slip but a swap changes one letter of the longer name, so that strange letters are slips at least.
  if (1 - strangeLetters(a, b) / longer < needed) return dice;
  return Math.max(dice, 1 - editDistance(a.key, b.key) / longer);
}

function diceCoefficient(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  let shared = 0;
  for (const pair of a) if (b.has(pair)) shared += 1;
  const all = a.size + b.size;
  return all > 0 ? (2 * shared) / all : 0;
}

/** How many letters of the longer name the other one has no counterpart for. */
function strangeLetters(a: ComparableName, b: ComparableName): number {
  const [longer, shorter] = a.key.length > b.key.length ? [a, b] : [b, a];
  let strange = 0;
  for (const [letter, count] of longer.letters) {
    strange += Math.max(0, count - (shorter.letters.get(letter) ?? 0));
  }
  return strange;
}
