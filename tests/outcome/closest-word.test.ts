import { closestWord } from "@tapewise/outcome";
import { expect, test } from "vitest";

const FIELDS = ["measuredBy", "stature", "cut", "readings", "id"];

test.each([
  ["measuredby", "measuredBy"],
  ["measured_by", "measuredBy"],
  ["Measured By", "measuredBy"],
  ["statrue", "stature"],
  ["reading", "readings"],
  ["cutt", "cut"],
  ["ID", "id"],
])("%j is meant for %j", (word, field) => {
  expect(closestWord(word, FIELDS)).toBe(field);
});

test.each(["name", "note", "", "constructor", "__proto__", "x".repeat(1_000_000)])(
  "%j is no slip",
  (word) => {
    expect(closestWord(word, FIELDS)).toBeUndefined();
  },
);

test("a short word bears one slip only", () => {
  expect(closestWord("foo", ["tool", "id"])).toBeUndefined();
  expect(closestWord("tol", ["tool", "id"])).toBe("tool");
});

test("the nearest wins", () => {
  expect(closestWord("women", ["men", "women"])).toBe("women");
  expect(closestWord("womn", ["men", "women"])).toBe("women");
});

test("of equally near words the first wins", () => {
  expect(closestWord("cot", ["cut", "cat"])).toBe("cut");
  expect(closestWord("cot", ["cat", "cut"])).toBe("cat");
});

test("two fifths of the letters may be wrong, and three at most", () => {
  // Seven letters bear two slips; of ten, two fifths would be four.
  expect(closestWord("xyature", ["stature"])).toBe("stature");
  expect(closestWord("xyzture", ["stature"])).toBeUndefined();
  expect(closestWord("xyzsured-by", ["measured-by"])).toBe("measured-by");
  expect(closestWord("xyzqured-by", ["measured-by"])).toBeUndefined();
});
