import { expect, test } from "vitest";
import { chanceOfEnough } from "../../packages/coverage/src/chance-of-enough.ts";

test("a crew that may swap, counted by hand", () => {
  // A quarter takes the first size only, half either, a quarter the second only.
  const rows = [
    { own: 0.25, shared: 0.5 },
    { own: 0.25, shared: 0 },
  ];
  // Two members, one of each: not enough when both take the same one only, 2 / 16.
  expect(chanceOfEnough(rows, 2)([1, 1])).toBeCloseTo(14 / 16, 14);
  // Three members, two and one: not enough when all three take the first only (1 / 64) or two or three of them
  // the second only (3 · 1/16 · 3/4 + 1/64 = 10 / 64).
  expect(chanceOfEnough(rows, 3)([2, 1])).toBeCloseTo(53 / 64, 14);
  expect(chanceOfEnough(rows, 3)([1, 2])).toBeCloseTo(53 / 64, 14);
  // Not more packs than members who take one.
  expect(chanceOfEnough(rows, 3)([1, 1])).toBe(0);
  expect(chanceOfEnough(rows, 3)([3, 3])).toBeCloseTo(1, 14);
});

test("without swaps it is a multinomial: four members, half and half, three of each", () => {
  const rows = [
    { own: 0.5, shared: 0 },
    { own: 0.5, shared: 0 },
  ];
  expect(chanceOfEnough(rows, 4)([3, 3])).toBeCloseTo(14 / 16, 14);
  expect(chanceOfEnough(rows, 4)([2, 2])).toBeCloseTo(6 / 16, 14);
  expect(chanceOfEnough(rows, 4)([4, 0])).toBeCloseTo(1 / 16, 14);
});

test("people in no row take nothing: half of three, one pack", () => {
  expect(chanceOfEnough([{ own: 0.5, shared: 0 }], 3)([1])).toBeCloseTo(4 / 8, 14);
  expect(chanceOfEnough([{ own: 0.5, shared: 0 }], 3)([0])).toBeCloseTo(1 / 8, 14);
});

test("those who wait for the next size come before its own", () => {
  // Everybody may have the first size or the second; the third is for nobody.
  const rows = [
    { own: 0, shared: 1 },
    { own: 0, shared: 0 },
    { own: 0, shared: 0 },
  ];
  expect(chanceOfEnough(rows, 5)([2, 3, 0])).toBeCloseTo(1, 14);
  expect(chanceOfEnough(rows, 5)([2, 2, 9])).toBeCloseTo(0, 14);
});
