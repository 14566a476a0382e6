import { path } from "@tapewise/figures";
import { expect, test } from "vitest";

test.each([
  [[], ""],
  [[[1, 2]], "M1 2"],
  [
    [
      [0, 0],
      [1 / 3, -2],
      [10, 2.5],
    ],
    "M0 0L0.33 -2L10 2.5",
  ],
] as const)("%j is %j", (points, data) => {
  expect(path(points)).toBe(data);
});
