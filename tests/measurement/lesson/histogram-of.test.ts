import { histogramOf } from "@tapewise/measurement";
import { expect, test } from "vitest";

test("counts every value once, the upper end of a bar in the next one", () => {
  const bars = histogramOf(Float64Array.from([-1, 0, 4.999, 5, 14]), 5);
  expect(bars.map(({ fromMm, toMm, count, share }) => [fromMm, toMm, count, share])).toEqual([
    [-5, 0, 1, 0.2],
    [0, 5, 2, 0.4],
    [5, 10, 1, 0.2],
    [10, 15, 1, 0.2],
  ]);
});

test.each([
  [[], 5, "valuesMm"],
  [[1, Number.NaN], 5, "valuesMm[1]"],
  [[1], 0, "widthMm"],
  [[0, 1], 1e-5, "widthMm"],
])("refuses %j in bars of %f", (values, width, argument) => {
  expect(() => histogramOf(values, width)).toThrow(`${argument} must be`);
});
