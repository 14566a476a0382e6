import { words } from "@tapewise/figures";
import { expect, test } from "vitest";

test.each([
  ["S & M < L > XL", "S &amp; M &lt; L &gt; XL"],
  ['19" or so', "19&quot; or so"],
  // XML 1.0 (fifth edition), 2.2: tab and line ends are characters of a document, other control characters are not.
  ["a\u0000b\u001bc\td", "a\u{FFFD}b\u{FFFD}c\td"],
  ["a\u{FFFE}", "a\u{FFFD}"],
  // Half a surrogate pair is no character.
  ["\uD83C", "\u{FFFD}"],
])("%j is written %j", (text, written) => {
  expect(words(text)).toBe(written);
});
