import { compose, interval, point, relation } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("equals changes nothing", () => {
  expect(compose("equals", "overlaps")).toEqual(["overlaps"]);
  expect(compose("overlaps", "equals")).toEqual(["overlaps"]);
});

test("before then after says nothing", () => {
  expect(compose("before", "after")).toHaveLength(13);
});

// By hand: a ends where b begins, b lies strictly inside c, so a ends inside c and may begin anywhere before.
test("meets then during leaves three", () => {
  expect(compose("meets", "during")).toEqual(["overlaps", "starts", "during"]);
});

test("does not hold through a point in the middle, as its docs say", () => {
  const [a, b, c] = [interval(1, 3), point(3), interval(3, 5)];
  expect(relation(a, b)).toBe("finished-by");
  expect(relation(b, c)).toBe("starts");
  expect(compose("finished-by", "starts")).toEqual(["overlaps"]);
  expect(relation(a, c)).toBe("meets");
});
