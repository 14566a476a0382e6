import { InvalidArgumentError } from "@tapewise/outcome";
import { decimalMarkOf } from "@tapewise/units";
import { expect, test } from "vitest";

test.each([
  // Unicode CLDR's decimal separators, from memory; for Latin digits, also where others are usual.
  ["en-GB", "."],
  ["en-US", "."],
  ["ja-JP", "."],
  ["de-DE", ","],
  ["fr-FR", ","],
  ["sv-SE", ","],
  ["pt-BR", ","],
  ["fa-IR", "."],
] as const)("%s writes %j", (locale, mark) => {
  expect(decimalMarkOf(locale)).toBe(mark);
});

test.each(["", "not a tag", "e"])("%j is no language tag", (locale) => {
  expect(() => decimalMarkOf(locale)).toThrow(InvalidArgumentError);
});
