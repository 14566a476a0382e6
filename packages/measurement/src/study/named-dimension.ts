import { ambiguousTerms, type DimensionId, dimensionNames, findDimension } from "@tapewise/landmarks";

/** What the words of a header name: one dimension, or several that they may mean. */
export interface NamedDimension {
  readonly dimension?: DimensionId;
  readonly candidates?: readonly DimensionId[];
}

/** Every name as it is compared, made when it is first needed. */
let known: ReadonlySet<string> | undefined;

/**
 * The dimension that words name, or nothing. As `findDimension`, without its suggestions: these cost a
 * thousand times as much, and most headers of a study name people.
 */
export function namedDimension(text: string): NamedDimension | undefined {
  known ??= new Set([
    ...dimensionNames.flatMap(({ id, name, synonyms }) => [id, name, ...synonyms]).map(letters),
    ...ambiguousTerms.flatMap(({ terms }) => terms).map(letters),
  ]);
  if (!known.has(letters(text))) return undefined;
  const found = findDimension(text);
  if (found.kind === "match") return { dimension: found.id };
  return found.kind === "ambiguous" ? { candidates: found.candidates } : undefined;
}

function letters(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");
}
