import { interval, point } from "@tapewise/intervals";
import type { Box } from "@tapewise/population";
import { expect, test } from "vitest";
import { cellsOf } from "../../packages/coverage/src/cells.ts";

const box = (torso: readonly [number, number], hip: readonly [number, number]): Box => ({
  "torso-length": interval(...torso),
  "hip-girth": interval(...hip),
});

test("two stretches that overlap are three cells", () => {
  const cells = cellsOf([{ stature: interval(1, 3) }, { stature: interval(2, 4) }], ["stature"]);
  expect(cells).toEqual([
    { box: { stature: interval(1, 2, { toClosed: false }) }, inside: [0] },
    { box: { stature: interval(2, 3) }, inside: [0, 1] },
    { box: { stature: interval(3, 4, { fromClosed: false }) }, inside: [1] },
  ]);
});

test("two stretches that share an end have a point in common", () => {
  const cells = cellsOf([{ stature: interval(1, 2) }, { stature: interval(2, 3) }], ["stature"]);
  expect(cells.map(({ inside }) => inside)).toEqual([[0], [0, 1], [1]]);
  expect(cells[1]?.box).toEqual({ stature: point(2) });
});

test("the areas of the cells add up to that of the union", () => {
  const boxes = [box([0, 4], [0, 4]), box([2, 6], [2, 6]), box([1, 3], [1, 5])];
  const cells = cellsOf(boxes, ["torso-length", "hip-girth"]);
  const length = (range: Box["stature"]) => (range === undefined ? 0 : range.to - range.from);
  const area = (one: Box) => length(one["torso-length"]) * length(one["hip-girth"]);
  // By hand: 16 + 16 + 8, less 4, 6 and 3 in pairs, plus 2 in all three.
  expect(cells.reduce((sum, cell) => sum + area(cell.box), 0)).toBe(29);
  expect(
    cells.filter(({ inside }) => inside.length === 3).reduce((sum, cell) => sum + area(cell.box), 0),
  ).toBe(2);
});

test("a box without a bound is cut where the others are", () => {
  const cells = cellsOf([{ stature: interval(1, 2) }, {}], ["stature"]);
  expect(cells.map(({ inside }) => inside)).toEqual([[1], [0, 1], [1]]);
  expect(cells.map((cell) => cell.box.stature?.to)).toEqual([1, 2, Number.POSITIVE_INFINITY]);
});

test("without boxes there is no cell, and without bounds a single one", () => {
  expect(cellsOf([], ["stature"])).toEqual([]);
  expect(cellsOf([{}, {}], ["stature"])).toEqual([{ box: {}, inside: [0, 1] }]);
});
