import { ambiguousTerms, dimensionNames, findDimension } from "@tapewise/landmarks";
import { expect, test } from "vitest";
import { namedDimension } from "../../../packages/measurement/src/study/named-dimension.ts";

test("knows every name that findDimension knows, however it is written", () => {
  for (const { id, name, synonyms } of dimensionNames) {
    for (const text of [
      id,
      name.toUpperCase(),
      ...synonyms.map((synonym) => ` ${synonym.replaceAll(" ", "_")} `),
    ]) {
      expect(findDimension(text)).toEqual({ kind: "match", id });
      expect(namedDimension(text)).toEqual({ dimension: id });
    }
  }
  for (const { terms, candidates } of ambiguousTerms) {
    for (const term of terms) expect(namedDimension(term)).toEqual({ candidates });
  }
});

test("and nothing else", () => {
  for (const text of ["", "Ann 1", "torso lenght", "value"]) expect(namedDimension(text)).toBeUndefined();
});
