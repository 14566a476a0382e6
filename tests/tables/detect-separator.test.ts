import { detectSeparator } from "@tapewise/tables";
import { expect, test } from "vitest";

test.each([
  ["tab before the others, for copied text has commas in its cells", "a\tb, c\n1\t2, 3", "\t"],
  ["semicolon before comma, for numbers may have decimal commas", "a, mm;b\n1,5;2,5", ";"],
  ["the one that the second line holds too", "name; first,b,c\n1,2,3", ","],
  ["a header alone", "a;b;c", ";"],
  ["comma where nothing parts the cells", "alone", ","],
  ["not what stands in quotation marks", '"a;b;c;d",e\n1,2', ","],
  ["not what stands in a remark or a blank line", "# a;b\n;;\na,b\n1,2", ","],
  ["behind a byte order mark", '\uFEFF"a;b",c\n1,2', ","],
])("the separator: %s", (_, text, expected) => {
  expect(detectSeparator(text)).toBe(expected);
});

test("a line that begins with # counts where there are no remarks", () => {
  expect(detectSeparator("#;a\n1,2;3", { remarks: false })).toBe(";");
  expect(detectSeparator("#;a\n1,2,3", { remarks: true })).toBe(",");
});
