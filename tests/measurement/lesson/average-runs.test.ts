import { expect, test } from "vitest";
import { averageRuns } from "../../../packages/measurement/src/lesson/average-runs.ts";

/** Four series that take turns. */
function turns(): (series: Float64Array) => void {
  const all = [
    [430, 440, 450],
    [440, 440, 430],
    [420, 460, 440],
    [450, 430, 470],
  ];
  let next = 0;
  return (series) => {
    series.set((all[next] ?? []).slice(0, series.length));
    next += 1;
  };
}

test("averages the first readings of each series", () => {
  const [one, three] = averageRuns(turns(), [1, 3], 4, 440);
  // 430, 440, 420, 450: off by −10, 0, −20, 10.
  expect(one?.mean).toMatchObject({ biasMm: -5, rmseMm: Math.sqrt(150) });
  expect([...(one?.mean.valuesMm ?? [])]).toEqual([420, 430, 440, 450]);
  // Deviations −5, 5, −15, 15 from the mean: 500/3.
  expect(one?.mean.sdMm).toBeCloseTo(Math.sqrt(500 / 3), 13);
  expect(one?.median).toEqual(one?.mean);
  // Medians 440, 440, 440, 450; means 440, 436.67, 440, 450.
  expect([...(three?.median.valuesMm ?? [])]).toEqual([440, 440, 440, 450]);
  expect(three?.mean.biasMm).toBeCloseTo((0 - 10 / 3 + 0 + 10) / 4, 12);
  expect(three?.median.quantilesMm).toEqual([440, 440, 440, 440, 450]);
});

test("counts the series that pick a size which the length does not lie in", () => {
  const sizes = [
    { from: 400, to: 435 },
    { from: 425, to: 460 },
  ];
  // The middle of the overlap is 430: of 420, 430, 440, 450 the first two pick the small size, which ends at 435.
  expect(averageRuns(turns(), [1], 4, 440, sizes)[0]?.mean.wrongShare).toBe(0.5);
  // 432 lies in both.
  expect(averageRuns(turns(), [1], 4, 432, sizes)[0]?.mean.wrongShare).toBe(0);
  // 470 lies in none.
  expect(averageRuns(turns(), [1], 4, 470, sizes)[0]?.mean.wrongShare).toBe(1);
});

test("keeps the order of the counts", () => {
  expect(averageRuns(turns(), [3, 1], 4, 440).map(({ count }) => count)).toEqual([3, 1]);
});
