import { blandAltman, blandAltmanRepeats } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const pairs = [
  { first: [431], second: [428] },
  { first: [446], second: [447] },
  { first: [412], second: [408] },
  { first: [455], second: [453] },
];

describe("blandAltmanRepeats", () => {
  test("single readings give the limits of pairs", () => {
    const repeated = blandAltmanRepeats(pairs, { trueValue: "constant" });
    const plain = blandAltman(
      pairs.map(({ first }) => first[0] ?? 0),
      pairs.map(({ second }) => second[0] ?? 0),
    );
    expect(repeated.bias.lower).toBeCloseTo(plain.bias.lower, 12);
    expect(repeated.differenceSd).toBeCloseTo(plain.differenceSd, 13);
    expect(repeated.upperLimit.value).toBeCloseTo(plain.upperLimit.value, 12);
    expect(repeated.withinVariances).toEqual([undefined, undefined]);
  });

  test("constant true value, by hand", () => {
    // Mean differences 3, −1 and 4 of two readings by each: mean 2, variance 7. Within first: squares 2 + 0 + 8 on 3
    // degrees of freedom, within second: 2 + 2 + 0 on 3. σ² = 7 + ½ · 10/3 + ½ · 4/3.
    const { bias, differenceSd, withinVariances } = blandAltmanRepeats(
      [
        { first: [430, 432], second: [427, 429] },
        { first: [446, 446], second: [446, 448] },
        { first: [410, 414], second: [408, 408] },
      ],
      { trueValue: "constant" },
    );
    expect(bias.value).toBe(2);
    expect(withinVariances?.map((v) => v?.toFixed(12))).toEqual([(10 / 3).toFixed(12), (4 / 3).toFixed(12)]);
    expect(differenceSd).toBeCloseTo(Math.sqrt(7 + 7 / 3), 13);
  });

  test("varying true value, by hand", () => {
    // Differences 2, 4 | 0, 0 | 5, 7: means 3, 0, 6, grand mean 3. MSB = 2 (0 + 9 + 9)/2 = 18, MSW = (2 + 0 + 2)/3.
    const { bias, differenceVariances, differenceSd, lowerLimit } = blandAltmanRepeats(
      [
        { first: [430, 452], second: [428, 448] },
        { first: [446, 439], second: [446, 439] },
        { first: [410, 427], second: [405, 420] },
      ],
      { trueValue: "varying", multiplier: 2 },
    );
    expect(bias.value).toBe(3);
    expect(differenceVariances?.[0]).toBeCloseTo((18 - 4 / 3) / 2, 12);
    expect(differenceVariances?.[1]).toBeCloseTo(4 / 3, 12);
    expect(lowerLimit.value).toBeCloseTo(3 - 2 * differenceSd, 12);
  });

  test("subjects who differ no more than their pairs do: one variance for all differences", () => {
    const { differenceVariances, differenceSd } = blandAltmanRepeats(
      [
        { first: [431, 429], second: [430, 430] },
        { first: [443, 437], second: [440, 440] },
        { first: [452, 448], second: [450, 450] },
      ],
      { trueValue: "varying" },
    );
    // Differences ±1, ±3, ±2 about 0: 28/5.
    expect(differenceVariances?.[0]).toBe(0);
    expect(differenceSd).toBeCloseTo(Math.sqrt(28 / 5), 12);
  });

  test("refuses what it cannot part", () => {
    expect(() => blandAltmanRepeats(pairs.slice(0, 2), { trueValue: "constant" })).toThrow("three subjects");
    expect(() => blandAltmanRepeats(pairs, { trueValue: "varying" })).toThrow("two pairs or more");
    const gap = [...pairs, { first: [1, 2], second: [1] }];
    expect(() => blandAltmanRepeats(gap, { trueValue: "varying" })).toThrow("subjects[4].second");
    expect(() =>
      blandAltmanRepeats([...pairs, { first: [], second: [1] }], { trueValue: "constant" }),
    ).toThrow("subjects[4].first");
    const alike = [1, 2, 3].map((value) => ({ first: [value, value], second: [value, value] }));
    expect(() => blandAltmanRepeats(alike, { trueValue: "constant" })).toThrow(InvalidArgumentError);
    // @ts-expect-error: what stays the same must be said
    expect(() => blandAltmanRepeats(pairs, {})).toThrow("options.trueValue");
  });
});
