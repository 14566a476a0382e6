import { averagingTable } from "@tapewise/measurement";
import { expect, test } from "vitest";

test("shows what shrinks and what stays", () => {
  const [one, four] = averagingTable({ perReadingMm: 8, lastingMm: 3 }, [1, 4]);
  expect(one).toMatchObject({ count: 1, averagedMm: 8, lastingMm: 3, gainMm: 0, gainShare: 0 });
  expect(four).toMatchObject({ count: 4, uncertaintyMm: 5, averagedMm: 4, lastingShare: 0.36 });
  // From √73 to 5, of √73 to 3.
  expect(four?.gainMm).toBeCloseTo(Math.sqrt(73) - 5, 14);
  expect(four?.gainShare).toBeCloseTo((Math.sqrt(73) - 5) / (Math.sqrt(73) - 3), 14);
});

test("runs from one to ten where nobody says otherwise", () => {
  const rows = averagingTable({ perReadingMm: 8, lastingMm: 3 });
  expect(rows.map(({ count }) => count)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
});

test("readings without scatter have nothing to gain, exact ones nothing that stays", () => {
  expect(averagingTable({ perReadingMm: 0, lastingMm: 3 }, [5])[0]).toMatchObject({
    uncertaintyMm: 3,
    lastingShare: 1,
    gainMm: 0,
    gainShare: 1,
  });
  expect(averagingTable({ perReadingMm: 0, lastingMm: 0 }, [5])[0]).toMatchObject({
    uncertaintyMm: 0,
    lastingShare: 0,
  });
});

test.each([
  [{ perReadingMm: -1, lastingMm: 3 }, [1], "perReadingMm"],
  [{ perReadingMm: 1, lastingMm: Number.NaN }, [1], "lastingMm"],
  [{ perReadingMm: 1, lastingMm: 3 }, [], "counts"],
  [{ perReadingMm: 1, lastingMm: 3 }, [1, 0], "counts[1]"],
])("refuses %o for %j", (error, counts, argument) => {
  expect(() => averagingTable(error, counts)).toThrow(`${argument} must be`);
});
