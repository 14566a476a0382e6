import { shorten } from "@tapewise/figures";
import { expect, test } from "vitest";

test.each([
  ["Doily", 5, "Doily"],
  ["Doily 45", 5, "Doil…"],
  // A character beyond the basic plane is one character, and is not halved.
  ["\u{1F392}\u{1F392}\u{1F392}", 2, "\u{1F392}…"],
])("%s within %i characters is %s", (text, characters, shortened) => {
  expect(shorten(text, characters)).toBe(shortened);
});
