import { fc, test } from "@fast-check/vitest";
import {
  ambiguousTerms,
  dimensionIds,
  dimensionNames,
  findDimension,
  safeParseDimension,
} from "@tapewise/landmarks";
import { describe, expect } from "vitest";

const knownNames = dimensionNames.flatMap(({ id, name, synonyms }) =>
  [id, name, ...synonyms].map((term) => ({ id, term })),
);
const ambiguous = ambiguousTerms.flatMap(({ terms, candidates }) =>
  terms.map((term) => ({ term, candidates })),
);
const anyName = fc.constantFrom(...knownNames.map(({ term }) => term), ...ambiguous.map(({ term }) => term));

/** Writes a name as somebody else would: letters in either case, gaps as spaces, hyphens, or nothing. */
const disguised = (names: fc.Arbitrary<string>): fc.Arbitrary<{ name: string; written: string }> =>
  fc
    .record({
      name: names,
      upper: fc.array(fc.boolean(), { minLength: 60, maxLength: 60 }),
      gap: fc.constantFrom("", " ", "-", "_", "  ", " - ", "\t", "\u00a0", "."),
      around: fc.constantFrom("", " ", "\n", "(", '"'),
    })
    .map(({ name, upper, gap, around }) => ({
      name,
      written:
        around +
        [...name]
          .map((letter, i) =>
            /[\s-]/.test(letter) ? gap : upper[i] ? letter.toUpperCase() : letter.toLowerCase(),
          )
          .join("") +
        around,
    }));

describe("names of dimensions", () => {
  test.prop([disguised(anyName)])(
    "law: case, spaces, hyphens and quotes make no difference",
    ({ name, written }) => {
      expect(findDimension(written)).toEqual(findDimension(name));
    },
  );

  test.prop([fc.constantFrom(...knownNames)])(
    "law: every id, name and synonym is found, as its own",
    (known) => {
      expect(findDimension(known.term)).toEqual({ kind: "match", id: known.id });
    },
  );

  test.prop([fc.constantFrom(...ambiguous)])(
    "law: an ambiguous term never matches one dimension",
    (known) => {
      expect(findDimension(known.term)).toMatchObject({ kind: "ambiguous", candidates: known.candidates });
    },
  );

  test.prop([fc.string({ unit: "binary", maxLength: 200 })])("law: no text throws", (text) => {
    expect(["match", "ambiguous", "unknown"]).toContain(findDimension(text).kind);
  });

  test.prop([
    fc.oneof(
      fc.string({ unit: "binary" }),
      fc.string({ unit: "grapheme-ascii" }),
      disguised(anyName).map(({ written }) => written),
    ),
  ])(
    "law: the outcome is ok exactly where the name matches, and shows the text where it does not",
    (text) => {
      const match = findDimension(text);
      const outcome = safeParseDimension(text);
      expect(outcome.ok).toBe(match.kind === "match");
      if (outcome.ok) expect(match).toEqual({ kind: "match", id: outcome.value });
      else expect(outcome.issues.map((issue) => issue.code)).toEqual([`dimension-name-${match.kind}`]);
    },
  );

  test.prop([fc.string({ unit: "grapheme", maxLength: 40 })])(
    "law: suggestions are at most three different dimensions",
    (text) => {
      const match = findDimension(text);
      const suggestions = match.kind === "unknown" ? match.suggestions : [];
      expect(suggestions.length).toBeLessThanOrEqual(3);
      expect(new Set(suggestions).size).toBe(suggestions.length);
      for (const id of suggestions) expect(dimensionIds).toContain(id);
    },
  );

  test.prop([
    fc.constantFrom(...dimensionNames.filter(({ name }) => name.length >= 9)),
    fc.nat(),
    fc.constantFrom("drop", "double", "swap"),
  ])("law: one slip of the finger in a long name still suggests its dimension", ({ id, name }, at, slip) => {
    const i = at % (name.length - 1);
    const slipped =
      slip === "drop"
        ? name.slice(0, i) + name.slice(i + 1)
        : slip === "double"
          ? name.slice(0, i) + name.charAt(i) + name.slice(i)
          : name.slice(0, i) + name.charAt(i + 1) + name.charAt(i) + name.slice(i + 2);
    const found = findDimension(slipped);
    const ids = found.kind === "match" ? [found.id] : found.kind === "unknown" ? found.suggestions : [];
    expect(ids).toContain(id);
  });
});
