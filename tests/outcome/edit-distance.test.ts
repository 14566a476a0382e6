import { editDistance } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

// Counted by hand: each step is named.
describe("editDistance", () => {
  test.each([
    ["", "", 0, "nothing to do"],
    ["", "cut", 3, "three put in"],
    ["tape", "tape", 0, "equal"],
    ["tap", "tape", 1, "one put in"],
    ["tapes", "tape", 1, "one left out"],
    ["tope", "tape", 1, "one changed"],
    ["taep", "tape", 1, "neighbours swapped"],
    ["kitten", "sitting", 3, "k to s, e to i, g put in"],
    ["ca", "abc", 3, "no letter is touched twice, so the swap cannot be split"],
  ])("%j to %j: %i (%s)", (a, b, slips) => {
    expect(editDistance(a, b)).toBe(slips);
    expect(editDistance(b, a)).toBe(slips);
  });
});
