import { escaped, printable } from "@tapewise/outcome";
import { expect, test } from "vitest";

// An escape sequence, a line end, a line separator (U+2028), a direction mark (U+202E), a lone surrogate.
const DISRUPTIVE = ["\u001b", "\n", "\u2028", "\u202e"];

test.each(DISRUPTIVE)("%j is put out of action", (character) => {
  expect(printable(`a${character}b`)).toBe("a\uFFFDb");
});

test.each(DISRUPTIVE)("%j is written as an escape that JSON reads back", (character) => {
  const text = escaped(`"a${character}b"`);
  expect(text).toMatch(/^"a\\u[0-9a-f]{4}b"$/);
  expect(JSON.parse(text)).toBe(`a${character}b`);
});

test("a lone surrogate is no character, and other text stays as it is", () => {
  expect(printable("a\ud800b")).toBe("a\uFFFDb");
  expect(printable("Größe “M” 43½ cm 😀")).toBe("Größe “M” 43½ cm 😀");
});
