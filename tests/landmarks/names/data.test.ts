import { ambiguousTerms, dimensionNames } from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";

/** The key in which two names must differ, written anew here so that a fault in the library shows. */
const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");

describe("names", () => {
  test("no name or synonym belongs to two dimensions, or twice to one", () => {
    const seen = new Map<string, string>();
    for (const { id, name, synonyms } of dimensionNames) {
      expect(plain(name)).toBe(plain(id));
      for (const term of [name, ...synonyms]) {
        expect(seen.get(plain(term)), `${term} of ${id}`).toBeUndefined();
        seen.set(plain(term), id);
      }
    }
  });

  test("no ambiguous term is a synonym, or ambiguous twice", () => {
    const sure = new Set(dimensionNames.flatMap(({ name, synonyms }) => [name, ...synonyms].map(plain)));
    const unsure = ambiguousTerms.flatMap(({ terms }) => terms.map(plain));
    for (const term of unsure) expect(sure.has(term), term).toBe(false);
    expect(new Set(unsure).size).toBe(unsure.length);
  });

  test.each(ambiguousTerms)("$terms.0 has different candidates", ({ candidates }) => {
    expect(new Set(candidates).size).toBe(candidates.length);
  });
});
