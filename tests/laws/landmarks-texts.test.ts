import {
  ambiguousTerms,
  cautions,
  dimension,
  dimensionIds,
  landmarks,
  limitRules,
  readingPractice,
  sources,
} from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";

const guides = dimensionIds.map(dimension);

describe("texts of the guide", () => {
  const labels = new Set([
    "id",
    "code",
    "name",
    "everydayName",
    "synonyms",
    "terms",
    "term",
    "title",
    "clause",
    "standard",
    "origin",
    "kind",
    "direction",
    "tool",
    "who",
    "caution",
    "landmark",
    "landmarks",
    "dimension",
    "dimensions",
    "moments",
    "candidates",
    "source",
    "column",
    "sample",
    "sex",
    "from",
    "rule",
  ]);
  const bareBases = ["common practice, no source", "assumption"];

  function sentences(value: unknown, key: string, path: string): { path: string; text: string }[] {
    if (typeof value === "string") {
      return labels.has(key) || bareBases.includes(value) ? [] : [{ path, text: value }];
    }
    if (Array.isArray(value)) return value.flatMap((item, i) => sentences(item, key, `${path}[${i}]`));
    if (typeof value !== "object" || value === null) return [];
    return Object.entries(value).flatMap(([name, item]) => sentences(item, name, `${path}.${name}`));
  }

  const all = sentences(
    { landmarks: [...landmarks], guides, cautions, readingPractice, ambiguousTerms, limitRules, sources },
    "",
    "",
  );

  test("the walk finds them", () => {
    expect(all.length).toBeGreaterThan(900);
    expect(all.some(({ path }) => path.includes("guides[0].slips[0].mend"))).toBe(true);
  });

  test("law: each is a sentence: it begins upper case or with a figure and ends with a stop or a question mark", () => {
    const broken = all.filter(({ text }) => !/^[\p{Lu}\d“].*[.?]$/su.test(text));
    expect(broken).toEqual([]);
  });

  test("law: none holds markup, a doubled space or stray white space", () => {
    const broken = all.filter(({ text }) => /[<>]|&[a-z]+;| {2}|^\s|\s$|\n|\*\*|`/.test(text));
    expect(broken).toEqual([]);
  });

  test("law: none promises what nobody can know", () => {
    const broken = all.filter(({ text }) => /\b(always works|guarantee|perfect fit|cures?)\b/i.test(text));
    expect(broken).toEqual([]);
  });
});
