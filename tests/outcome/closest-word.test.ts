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
