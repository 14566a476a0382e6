import { label } from "@tapewise/figures";
import { expect, test } from "vitest";

test("a label is text in the colour around it, and nothing in it is markup", () => {
  expect(label(1, 2, "<b>")).toBe('<text x="1" y="2" fill="currentColor" font-size="13">&lt;b&gt;</text>');
});

test("attributes go before what it has of its own", () => {
  expect(label(1, 2, "S", { "font-size": 20 })).toBe(
    '<text x="1" y="2" fill="currentColor" font-size="20">S</text>',
  );
});
