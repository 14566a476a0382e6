import { type DimensionId, dimensionIds } from "./dimension-id.ts";
import { nameIndex } from "./name-index.ts";
import { nameKey } from "./name-key.ts";
import { comparableName, nameSimilarity } from "./name-similarity.ts";
import type { AmbiguousTerm } from "./names/ambiguous-terms.ts";

/** What a text turned out to name. */
export type DimensionMatch =
  | { readonly kind: "match"; readonly id: DimensionId }
  | {
      readonly kind: "ambiguous";
      /** What it may mean, the likelier one on a pack's chart first. */
      readonly candidates: AmbiguousTerm["candidates"];
      readonly explanation: string;
    }
  | {
      readonly kind: "unknown";
      /** At most three ids with a similar name, the most similar first; empty when none is similar. */
      readonly suggestions: readonly DimensionId[];
    };

const LONGEST_COMPARED = 60;
const LEAST_SIMILARITY = 0.55;
/** A suggestion far behind the best one is noise. */
const LEAST_SHARE_OF_BEST = 0.8;
const MOST_SUGGESTIONS = 3;

/**
 * Which dimension a text names, as people and charts write it. Upper case, spaces, hyphens and other
 * punctuation make no difference. Never throws and never guesses: a text is a known name, or a term
 * that is known to mean several things (bare "hip" is the commonest), or unknown with suggestions.
 *
 * A unit in the text ("torso (cm)") makes it unknown: take units off first.
 *
 * @example
 * ```ts
 * import { findDimension } from "@tapewise/landmarks";
 * findDimension("Back Length (C7 to crest)"); // => { kind: "match", id: "torso-length" }
 * const hips = findDimension("Hips");
 * hips.kind === "ambiguous" && hips.candidates; // => ["hip-belt-girth", "hip-girth"]
 * findDimension("torso lenght"); // => { kind: "unknown", suggestions: ["torso-length"] }
 * ```
 */
export function findDimension(text: string): DimensionMatch {
  const key = nameKey(text);
  const meaning = nameIndex().meanings.get(key);
  if (meaning === undefined) return { kind: "unknown", suggestions: suggest(key.slice(0, LONGEST_COMPARED)) };
  if (typeof meaning === "string") return { kind: "match", id: meaning };
  const { candidates, explanation } = meaning;
  return { kind: "ambiguous", candidates, explanation };
}

function suggest(key: string): readonly DimensionId[] {
  if (key === "") return [];
  const written = comparableName(key);
  const best = new Map<DimensionId, number>();
  for (const term of nameIndex().terms) {
    const score = nameSimilarity(written, term, LEAST_SIMILARITY);
    for (const id of term.ids) best.set(id, Math.max(score, best.get(id) ?? 0));
  }
  const least = Math.max(LEAST_SIMILARITY, LEAST_SHARE_OF_BEST * Math.max(...best.values()));
  return dimensionIds
    .filter((id) => (best.get(id) ?? 0) >= least)
    .sort((a, b) => (best.get(b) ?? 0) - (best.get(a) ?? 0))
    .slice(0, MOST_SUGGESTIONS);
}
