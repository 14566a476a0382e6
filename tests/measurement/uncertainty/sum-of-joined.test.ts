import { sumOfJoined } from "@tapewise/measurement";
import { expect, test } from "vitest";

const pieces = [300, 300, 100].map((mm) => ({ mm, uncertaintyMm: 1, degreesOfFreedom: 6 }));

test("pieces and joints err independently", () => {
  const sum = sumOfJoined(pieces, { jointMm: 2 });
  expect(sum.value).toBe(700);
  // 3 · 1 + 2 · 4 = 11
  expect(sum.uncertainty).toBeCloseTo(Math.sqrt(11), 14);
  // 11² / (3 · 1/6)
  expect(sum.degreesOfFreedom).toBeCloseTo(242, 9);
  expect(sum.lines.map(({ name }) => name)).toEqual(["piece 1", "piece 2", "piece 3", "joint 1", "joint 2"]);
});

test("the scale is off in all pieces alike", () => {
  // 3 + (0.003 · 700)²/3 = 3 + 1.47; independent in each piece it would be (0.003)²(300² + 300² + 100²)/3 = 0.57.
  expect(sumOfJoined(pieces, { scaleHalfWidth: 0.003 }).uncertainty).toBeCloseTo(Math.sqrt(4.47), 12);
});

test("one piece has no joint", () => {
  const [first] = pieces;
  expect(sumOfJoined(first === undefined ? [] : [first], { jointMm: 50 }).uncertainty).toBe(1);
});

test.each([
  [[], {}, "pieces"],
  [pieces, { jointMm: -1 }, "jointMm"],
  [pieces, { scaleHalfWidth: Number.NaN }, "scaleHalfWidth"],
  [[{ mm: Number.NaN, uncertaintyMm: 1 }], {}, "inputs[0].value"],
])("refuses %j with %j", (list, options, argument) => {
  expect(() => sumOfJoined(list, options)).toThrow(`${argument} must be`);
});
