import { drawSheet, element, label } from "@tapewise/figures";
import { expect, test } from "vitest";

test("a picture goes nowhere without its title, its description and its notes", () => {
  const sheet = { title: "t", description: "d", notes: [], id: "a", width: 720, height: 60 };
  expect(drawSheet(sheet, [])).toContain("<title");
  const { description: _, ...silent } = sheet;
  // @ts-expect-error people who do not see it would be told nothing
  expect(() => drawSheet(silent, [])).toThrow();
});

test("attributes are text or numbers", () => {
  // @ts-expect-error an object is no attribute
  expect(element("g", { style: { fill: "red" } })).toContain("[object Object]");
  // @ts-expect-error places are numbers
  expect(label("1", 2, "S")).toContain('x="1"');
});
