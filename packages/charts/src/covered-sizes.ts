import { sizeRank } from "./size-rank.ts";

/**
 * The sizes that a name covers: `["S", "M"]` for the double sizes `S/M`, `S-M` and `S to M`, else the
 * name alone. A name is split only where each part is a size by itself and all are named in one way, so
 * that `X-Large` and `M/Tall` stay whole. Numbers are split at a slash only: `36-38` may be a range.
 */
export function coveredSizes(name: string): readonly string[] {
  const parts = name.split(/\s*[/&+,\p{Pd}]\s*|\s+(?:to|and)\s+/iu);
  const ranks = parts.map(sizeRank);
  const family = ranks[0]?.family;
  const sameFamily = family !== undefined && ranks.every((rank) => rank?.family === family);
  const distinct = new Set(ranks.map((rank) => rank?.rank)).size === parts.length;
  const splits = family !== "number" || /^\d+(?:\s*\/\s*\d+)+$/.test(name);
  return sameFamily && distinct && splits ? parts : [name];
}
