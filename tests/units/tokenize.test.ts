import { describe, expect, test } from "vitest";
import { isNumber, tokenize } from "../../packages/units/src/tokenize.ts";

test.each([
  ["", []],
  [" \t\n", []],
  ["43.2 cm", ["43.2", "cm"]],
  ["43,2CM.", ["43,2", "cm"]],
  ["1,750.5mm", ["1,750.5", "mm"]],
  [".5in", [".5", "in"]],
  ["43. cm", ["43", ".", "cm"]],
  ["1' 6⅜\"", ["1", "'", "6", "3", "/", "8", '"']],
  ["19''", ["19", "''"]],
  ["5 ft.7 in.", ["5", "ft", "7", "in"]],
  ["18-3/8", ["18", "-", "3", "/", "8"]],
  ["18⅟8", ["18", "1", "/", "8"]],
  ["18³⁄₁₆", ["18", "3", "/", "16"]],
  ["43 m²", ["43", "m", "²"]],
  ["４３．２　ｃｍ", ["43.2", "cm"]],
  ["43㎠①", ["43", "㎠", "①"]],
  ["\ud83d", ["\ud83d"]],
])("%j", (text, tokens) => {
  expect(tokenize(text)).toEqual(tokens);
});

test("only numbers are numbers", () => {
  expect(tokenize("18³⁄₁₆ in. 1,5 - 2 ① ٣").filter(isNumber)).toEqual(["18", "3", "16", "1,5", "2"]);
});

/** Work that grew with the square of a megabyte would outlast the time a test has many times over. */
describe("a megabyte of the same", () => {
  test.each([
    // The pattern, and how many tokens a megabyte of it makes.
    ["1", 1],
    [".", 1_000_000],
    ["1,", 2],
    ["1.", 2],
    ["'", 500_000],
    ["a", 1],
    ["a.", 500_000],
    [" ", 0],
    ["-", 1_000_000],
    ["³", 1_000_000],
    ["₃", 1_000_000],
    // 3 / 8 each
    ["³⁄₈", 999_999],
    ["⅜", 3_000_000],
    ["³8", 1_000_000],
  ])("%j", (pattern, tokens) => {
    expect(tokenize(pattern.repeat(Math.floor(1_000_000 / pattern.length)))).toHaveLength(tokens);
  });
});
