/** Where a size stands among sizes that are named in the same way. */
export interface SizeRank {
  readonly family: "letter" | "length" | "number";
  readonly rank: number;
}

const LENGTH_WORDS: Readonly<Record<string, number>> = {
  short: -1,
  regular: 0,
  reg: 0,
  normal: 0,
  tall: 1,
  long: 1,
};
const WORD_ENDS: Readonly<Record<string, string>> = { small: "s", medium: "m", med: "m", large: "l" };

/**
 * The rank that a size has by its name alone: `S` before `M` before `L`, `XS` before `S`, `Regular`
 * before `Tall`, 36 before 38. Nothing for other names (common practice, no source).
 */
export function sizeRank(name: string): SizeRank | undefined {
  const lower = name.trim().toLowerCase();
  const lengthRank = Object.hasOwn(LENGTH_WORDS, lower) ? LENGTH_WORDS[lower] : undefined;
  if (lengthRank !== undefined) return { family: "length", rank: lengthRank };
  if (/^\d{1,3}$/.test(lower)) return { family: "number", rank: Number(lower) };
  const letters = lower
    .replace(/(small|medium|med|large)$/, (word) => WORD_ENDS[word] ?? word)
    .replace(/^extra[ -]?/, "x")
    .replace(/^(x+)[ -]/, "$1");
  const parts = /^(?:(\d)x|(x{0,5}))([sml])$/.exec(letters);
  if (parts === null) return undefined;
  const extra = parts[1] === undefined ? (parts[2] ?? "").length : Number(parts[1]);
  if (parts[3] === "m") return extra === 0 ? { family: "letter", rank: 0 } : undefined;
  return { family: "letter", rank: parts[3] === "s" ? -1 - extra : 1 + extra };
}
