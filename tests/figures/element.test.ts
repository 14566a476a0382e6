import { element, words } from "@tapewise/figures";
import { expect, test } from "vitest";

test("attributes are escaped, and those that are undefined left out", () => {
  expect(element("rect", { id: 'a"b', x: undefined })).toBe('<rect id="a&quot;b"/>');
});

test.each([
  [1 / 3, "0.33"],
  [-0.001, "0"],
  [2.005e3, "2005"],
  [0.125, "0.13"],
])("the number %f is written %s", (value, written) => {
  expect(element("rect", { x: value })).toBe(`<rect x="${written}"/>`);
});

test("children stand in the element as they are", () => {
  expect(element("g", {}, element("title", {}, words("S & M")), element("rect", {}))).toBe(
    "<g><title>S &amp; M</title><rect/></g>",
  );
});
