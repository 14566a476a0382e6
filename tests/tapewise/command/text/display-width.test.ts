import { describe, expect, test } from "vitest";
import {
  displayWidth,
  padEnd,
  padStart,
  shorten,
} from "../../../../packages/tapewise/src/command/text/display-width.ts";

describe("displayWidth", () => {
  test.each([
    ["M", 1],
    ["Größe", 5],
    ["e\u0301", 1],
    ["中", 2],
    ["🎒", 2],
    ["", 0],
  ])("%j takes %i cells", (text, width) => {
    expect(displayWidth(text)).toBe(width);
  });

  test("pads by cells", () => {
    expect(padEnd("中", 4)).toBe("中  ");
    expect(padStart("中", 4)).toBe("  中");
    expect(padEnd("long", 2)).toBe("long");
  });

  test("shortens by cells and says so", () => {
    expect(shorten("abcdef", 6)).toBe("abcdef");
    expect(shorten("abcdefg", 6)).toBe("abcd..");
    expect(shorten("中中中中", 5)).toBe("中..");
  });
});
