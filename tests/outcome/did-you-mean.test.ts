import { didYouMean } from "@tapewise/outcome";
import { expect, test } from "vitest";

test.each([
  [[], ""],
  [["stature"], "; did you mean “stature”?"],
  [["hip-belt-girth", "hip-girth"], "; did you mean “hip-belt-girth” or “hip-girth”?"],
])("of %j", (words, hint) => {
  expect(didYouMean(words)).toBe(hint);
});
