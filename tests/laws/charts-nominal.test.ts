import { fc, test } from "@fast-check/vitest";
import { inferNominalIntervals } from "@tapewise/charts";
import { contains, type Interval, interval, overlapLength } from "@tapewise/intervals";
import { expect } from "vitest";

/** Whole millimetres, far enough from zero that no interval is cut off there. */
const nominals = fc.uniqueArray(fc.integer({ min: 1000, max: 2000 }), { minLength: 2, maxLength: 8 });
const ranges = fc.array(
  fc
    .tuple(fc.integer({ min: 1000, max: 2000 }), fc.integer({ min: 0, max: 300 }))
    .map(([from, width]) => interval(from, from + width)),
  { maxLength: 5 },
);

const ascending = (a: number, b: number): number => a - b;

function known(intervals: readonly (Interval | undefined)[]): readonly Interval[] {
  return intervals.map((each) => {
    if (each === undefined) throw new Error("an interval is missing");
    return each;
  });
}

test.prop([nominals])("law: nominal lengths tile the axis without gap or overlap", (lengths) => {
  const tiles = known(inferNominalIntervals([...lengths].sort(ascending)));
  for (const [position, tile] of tiles.entries()) {
    const next = tiles[position + 1];
    if (next !== undefined) expect(next.from).toBe(tile.to);
  }
});

test.prop([nominals, ranges])("law: an inferred interval contains its length", (lengths, stated) => {
  inferNominalIntervals(lengths, stated).forEach((each, position) => {
    if (each !== undefined) expect(contains(each, lengths[position] ?? 0)).toBe(true);
  });
});

test.prop([nominals, ranges, fc.integer({ min: -500, max: 5000 })])(
  "law: shifting all lengths shifts their intervals",
  (lengths, stated, by) => {
    const shifted = inferNominalIntervals(
      lengths.map((length) => length + by),
      stated.map(({ from, to }) => interval(from + by, to + by)),
    );
    // A bound that mirrors a far one may pass zero, where it is cut off.
    const expected = inferNominalIntervals(lengths, stated).map(
      (each) => each && interval(Math.max(0, each.from + by), each.to + by),
    );
    const cutBefore = inferNominalIntervals(lengths, stated).some((each) => each?.from === 0);
    fc.pre(!cutBefore);
    expect(shifted).toEqual(expected);
  },
);

test.prop([nominals, ranges])("law: doubling all lengths doubles their intervals", (lengths, stated) => {
  const doubled = inferNominalIntervals(
    lengths.map((length) => 2 * length),
    stated.map(({ from, to }) => interval(2 * from, 2 * to)),
  );
  expect(doubled).toEqual(
    inferNominalIntervals(lengths, stated).map((each) => each && interval(2 * each.from, 2 * each.to)),
  );
});

test.prop([
  nominals.chain((lengths) =>
    fc.tuple(fc.constant(lengths), fc.shuffledSubarray(lengths, { minLength: lengths.length })),
  ),
  ranges,
])("law: the order of the lengths and of the ranges plays no part", ([lengths, shuffled], stated) => {
  const byLength = new Map(
    inferNominalIntervals(lengths, stated).map((each, position) => [lengths[position], each]),
  );
  const again = inferNominalIntervals(shuffled, [...stated].reverse());
  for (const [position, length] of shuffled.entries()) expect(again[position]).toEqual(byLength.get(length));
});

test.prop([nominals, ranges])(
  "law: on the side of a bound, an inferred interval enters no range that does not hold its length",
  (lengths, stated) => {
    inferNominalIntervals(lengths, stated).forEach((each, position) => {
      const length = lengths[position] ?? 0;
      if (each === undefined) return;
      for (const range of stated) if (!contains(range, length)) expect(overlapLength(each, range)).toBe(0);
    });
  },
);
