import { IssuesError } from "@tapewise/outcome";
import { parseLengthUnit, safeParseLengthUnit } from "@tapewise/units";
import { expect, test } from "vitest";

test.each([
  ["mm", "mm"],
  ["CM", "cm"],
  [" cm ", "cm"],
  ["cm.", "cm"],
  ["Metres", "m"],
  ["meter", "m"],
  ["M", "m"],
  ["in.", "in"],
  ["Inches", "in"],
  ['"', "in"],
  ["″", "in"],
  ["''", "in"],
  ["’", "ft"],
  ["Feet", "ft"],
  ["㎝", "cm"],
] as const)("%s is %s", (text, unit) => {
  expect(parseLengthUnit(text)).toBe(unit);
});

test.each([
  ["", "length-empty"],
  [" ", "length-empty"],
  ["cn", "length-unit-unknown"],
  ["cm in", "length-unit-unknown"],
  ["43 cm", "length-unit-unknown"],
  ["(cm)", "length-unit-unknown"],
  ["-", "length-unit-unknown"],
  ["kg", "length-unit-wrong-kind"],
  ["%", "length-unit-wrong-kind"],
  ["yd", "length-unit-unread"],
  ["c".repeat(65), "length-too-long"],
  [7, "length-not-text"],
])("%j is refused", (text, code) => {
  expect(
    safeParseLengthUnit(text, { path: ["unit"] }).issues.map((issue) => [issue.code, issue.path]),
  ).toEqual([[code, ["unit"]]]);
});

test("an unknown unit comes with the one that may be meant", () => {
  const [issue] = safeParseLengthUnit("cn").issues;
  expect([issue?.message, issue?.expected]).toEqual([
    "cn is not a known unit of length",
    "a unit such as cm",
  ]);
});

test("parseLengthUnit throws what safeParseLengthUnit returns", () => {
  expect(() => parseLengthUnit("kg")).toThrow(IssuesError);
});
