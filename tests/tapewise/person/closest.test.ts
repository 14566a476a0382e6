import { expect, test } from "vitest";
import { closest } from "../../../packages/tapewise/src/person/closest.ts";

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
  expect(closest(word, FIELDS)).toBe(field);
});

test.each(["name", "note", "", "constructor", "__proto__", "x".repeat(1_000_000)])(
  "%j is no slip",
  (word) => {
    expect(closest(word, FIELDS)).toBeUndefined();
  },
);

test("the nearest wins", () => {
  expect(closest("women", ["men", "women"])).toBe("women");
  expect(closest("womn", ["men", "women"])).toBe("women");
});
