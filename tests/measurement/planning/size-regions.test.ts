import { expect, test } from "vitest";
import { sizeRegions } from "../../../packages/measurement/src/planning/size-regions.ts";

const open = Number.POSITIVE_INFINITY;

test("the middle of an overlap and of a gap part two sizes, in whatever order they come", () => {
  const regions = sizeRegions([
    { from: 490, to: 530 },
    { from: 380, to: 435 },
    { from: 425, to: 480 },
  ]);
  expect(regions.map(({ index, pickedFrom, pickedTo }) => [index, pickedFrom, pickedTo])).toEqual([
    [1, -open, 430],
    [2, 430, 485],
    [0, 485, open],
  ]);
});

test("ends may be open", () => {
  const regions = sizeRegions([
    { from: 440, to: open },
    { from: -open, to: 440 },
  ]);
  expect(regions.map(({ pickedTo }) => pickedTo)).toEqual([440, open]);
});

test("a size within another is never picked, of two that are the same the first is", () => {
  const picked = (sizes: readonly { readonly from: number; readonly to: number }[]) =>
    sizeRegions(sizes).map(({ index, pickedFrom, pickedTo }) => [index, pickedFrom, pickedTo]);
  expect(
    picked([
      { from: 2, to: 3 },
      { from: 1, to: 9 },
      { from: 5, to: 9 },
      { from: 8, to: 12 },
      { from: 1, to: 9 },
    ]),
  ).toEqual([
    [1, -open, 8.5],
    [3, 8.5, open],
  ]);
  expect(
    picked([
      { from: 2, to: open },
      { from: 1, to: open },
      { from: -open, to: 5 },
      { from: -open, to: 6 },
    ]),
  ).toEqual([
    [3, -open, 3.5],
    [1, 3.5, open],
  ]);
});

test.each([
  [[], "sizes"],
  [[{ from: 2, to: 1 }], "sizes[0]"],
  [[{ from: 1, to: 1 }], "sizes[0]"],
  [[{ from: Number.NaN, to: 1 }], "sizes[0]"],
  [[{ from: open, to: open }], "sizes[0]"],
])("refuses %j", (sizes, argument) => {
  expect(() => sizeRegions(sizes)).toThrow(`${argument} must be`);
});
