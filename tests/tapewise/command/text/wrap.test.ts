import { describe, expect, test } from "vitest";
import { bullets, wrap } from "../../../../packages/tapewise/src/command/text/wrap.ts";

describe("wrap", () => {
  test("breaks at spaces, and indents the rest", () => {
    expect(wrap("one two three", { first: "- ", rest: "  " }, 9)).toEqual(["- one two", "  three"]);
  });

  test("leaves a word that is longer than the page whole", () => {
    expect(wrap("a bbbbbbbbbb c", { first: "", rest: "" }, 5)).toEqual(["a", "bbbbbbbbbb", "c"]);
  });

  test("makes a list", () => {
    expect(bullets(["one", "two"])).toEqual(["  - one", "  - two"]);
  });
});
