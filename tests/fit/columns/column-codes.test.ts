import { columnReasons, columnVerdicts, reasonTexts } from "@tapewise/fit";
import { expect, test } from "vitest";

test("no reason has two bits, and all of them have room in a whole number of 32 bits beside its sign", () => {
  expect(new Set(columnReasons).size).toBe(columnReasons.length);
  expect(columnReasons.length).toBeLessThan(32);
});

test("every reason has its text", () => {
  expect(columnReasons.filter((code) => !(code in reasonTexts))).toEqual([]);
});

test("no verdict has two numbers", () => {
  expect(new Set(columnVerdicts).size).toBe(5);
});
