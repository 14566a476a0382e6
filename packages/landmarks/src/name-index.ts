import type { DimensionId } from "./dimension-id.ts";
import { nameKey } from "./name-key.ts";
import { type ComparableName, comparableName } from "./name-similarity.ts";
import { type AmbiguousTerm, ambiguousTerms } from "./names/ambiguous-terms.ts";
import { dimensionNames } from "./names/data.ts";

/** A term with the dimensions that it may mean. */
export interface IndexedTerm extends ComparableName {
  readonly ids: readonly DimensionId[];
}

/** All names, made ready to be looked up and to be compared. */
export interface NameIndex {
  /** What each key names: a dimension, or a term that means several. */
  readonly meanings: ReadonlyMap<string, DimensionId | AmbiguousTerm>;
  /** What a text that is none of them is held against: everything but the ids. */
  readonly terms: readonly IndexedTerm[];
}

let index: NameIndex | undefined;

/** The index of names, made when it is first asked for: a long file asks for it with every cell of its header. */
export function nameIndex(): NameIndex {
  index ??= makeIndex();
  return index;
}

function makeIndex(): NameIndex {
  const meanings = new Map<string, DimensionId | AmbiguousTerm>();
  const terms: IndexedTerm[] = [];
  for (const { id, name, synonyms } of dimensionNames) {
    meanings.set(nameKey(id), id);
    for (const term of [name, ...synonyms]) {
      const comparable = comparableName(nameKey(term));
      meanings.set(comparable.key, id);
      terms.push({ ...comparable, ids: [id] });
    }
  }
  for (const ambiguous of ambiguousTerms) {
    for (const term of ambiguous.terms) {
      const comparable = comparableName(nameKey(term));
      meanings.set(comparable.key, ambiguous);
      terms.push({ ...comparable, ids: ambiguous.candidates });
    }
  }
  return { meanings, terms };
}
