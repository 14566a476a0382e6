import { line } from "@tapewise/figures";
import { expect, test } from "vitest";

test("a line runs from one end to the other, as its attributes say", () => {
  expect(line(1, 2, 3, 4, { stroke: "none", "stroke-dasharray": "4 2" })).toBe(
    '<line x1="1" y1="2" x2="3" y2="4" stroke="none" stroke-dasharray="4 2"/>',
  );
});
