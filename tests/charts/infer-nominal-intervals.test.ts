import { inferNominalIntervals } from "@tapewise/charts";
import { atLeast, atMost, interval } from "@tapewise/intervals";
import { describe, expect, test } from "vitest";

const ends = (
  nominals: readonly number[],
  ranges = [] as Parameters<typeof inferNominalIntervals>[1],
): unknown => inferNominalIntervals(nominals, ranges).map((each) => each && [each.from, each.to]);

describe("nominal lengths alone", () => {
  test("meet halfway, and reach half the spacing at the ends", () => {
    // Midpoints of 42, 46 and 52 cm: 44 and 49; half spacings at the ends: 2 and 3.
    expect(ends([420, 460, 520])).toEqual([
      [400, 440],
      [440, 490],
      [490, 550],
    ]);
  });

  test("in any order, the answers in the order of the question", () => {
    expect(ends([520, 420, 460])).toEqual([
      [490, 550],
      [400, 440],
      [440, 490],
    ]);
  });

  test("of one length have one interval", () => {
    expect(ends([460, 460, 500])).toEqual([
      [440, 480],
      [440, 480],
      [480, 520],
    ]);
  });

  test("never reach below zero", () => {
    // Half of the spacing would be 90: from 20 - 90 it is cut at 0.
    expect(ends([20, 200])).toEqual([
      [0, 110],
      [110, 290],
    ]);
  });

  test("without a neighbour cannot tell", () => {
    expect(ends([460])).toEqual([undefined]);
    expect(ends([460, 460])).toEqual([undefined, undefined]);
    expect(ends([])).toEqual([]);
  });
});

describe("among stated ranges", () => {
  test("fill the gap between two", () => {
    expect(ends([460], [interval(380, 430), atLeast(480)])).toEqual([[430, 480]]);
  });

  test("end at the nearest edge on one side, and reach as far on the other", () => {
    expect(ends([460], [interval(380, 430)])).toEqual([[430, 490]]);
    expect(ends([460], [interval(480, 530)])).toEqual([[440, 480]]);
  });

  test("take whichever comes first: edge or midpoint", () => {
    // Down from 500 the edge at 470 comes before the midpoint to 420, which is 460.
    expect(ends([420, 500], [interval(440, 470)])).toEqual([
      [400, 440],
      [470, 530],
    ]);
    // And down from 500 the midpoint 490 to 480 comes before the edge at 430.
    expect(ends([480, 500], [interval(380, 430)])).toEqual([
      [430, 490],
      [490, 510],
    ]);
  });

  test("are not bounded by a range that contains them", () => {
    expect(ends([460], [interval(440, 480)])).toEqual([undefined]);
    expect(ends([460], [interval(460, 480), atMost(460)])).toEqual([undefined]);
    expect(ends([460], [atMost(500), interval(520, 560)])).toEqual([[400, 520]]);
  });
});

test("a length that is none is the caller's mistake", () => {
  for (const none of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => inferNominalIntervals([1, none, 3])).toThrow("nominalsMm[1] must be a finite length");
  }
});
