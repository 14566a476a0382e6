import { describe, expect, test } from "vitest";
import { cleanJson, cleanLines, cleanWord } from "../../../../packages/tapewise/src/command/text/clean.ts";

describe("clean", () => {
  test("takes escape sequences and direction marks out of words", () => {
    expect(cleanWord("M\u001b[31m\u202E\u009b\n")).toBe("M\uFFFD[31m\uFFFD\uFFFD\uFFFD");
  });

  test("keeps the line ends of whole output", () => {
    expect(cleanLines("a\r\nb\u0007")).toBe("a\uFFFD\nb\uFFFD");
  });

  test("keeps the value of JSON and escapes what a terminal would act on", () => {
    const value = { name: "M\u009b31m\u202E\u2028", list: [1] };
    const text = cleanJson(value, 2);
    expect(text).not.toMatch(/[\u009b\u202e\u2028]/);
    expect(JSON.parse(text)).toEqual(value);
  });
});
