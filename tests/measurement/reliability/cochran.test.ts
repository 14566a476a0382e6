import { cochranCriticalValue, cochranTest } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

const one = (variance: number) => ({ variance, degreesOfFreedom: 1 });

test("with two variances it is the two-sided F test", () => {
  // F with 2 and 2 degrees of freedom has P(F > f) = 1 / (1 + f), so that α/2 gives f = 2/α − 1.
  const f = 2 / 0.05 - 1;
  expect(cochranCriticalValue(2, 2, 4, 0.05)).toBeCloseTo(f / (f + 1), 12);
  const result = cochranTest(
    [
      { variance: 9, degreesOfFreedom: 2 },
      { variance: 1, degreesOfFreedom: 2 },
    ],
    0.05,
  );
  // f = 9: p = 2 / (1 + 9).
  expect(result).toMatchObject({ index: 0, statistic: 0.9, isOutlier: false });
  expect(result.pValue).toBeCloseTo(0.2, 12);
});

test("the variance that is largest for its degrees of freedom is tested, not the largest share", () => {
  const variances = [
    { variance: 4, degreesOfFreedom: 40 },
    { variance: 30, degreesOfFreedom: 2 },
    { variance: 4, degreesOfFreedom: 2 },
  ];
  const result = cochranTest(variances, 0.05);
  expect(result.index).toBe(1);
  expect(result.statistic).toBeCloseTo(60 / (160 + 60 + 8), 12);
  expect(result.isOutlier).toBe(true);
});

test("the decision is that of the probability", () => {
  for (const largest of [1, 5, 50, 500]) {
    const { isOutlier, pValue } = cochranTest([one(largest), one(1), one(2), one(1.5)], 0.05);
    expect(isOutlier).toBe(pValue < 0.05);
  }
});

test("variances that are all 0 have no outlier; one beside zeros is one", () => {
  expect(cochranTest([one(0), one(0)], 0.05)).toMatchObject({ statistic: 0, pValue: 1, isOutlier: false });
  expect(cochranTest([one(0), one(3)], 0.05)).toMatchObject({
    index: 1,
    statistic: 1,
    pValue: 0,
    isOutlier: true,
  });
});

test("refuses what is no set of variances", () => {
  expect(() => cochranTest([], 0.05)).toThrow(InvalidArgumentError);
  expect(() => cochranTest([one(1)], 0.05)).toThrow(InvalidArgumentError);
  expect(() => cochranTest([one(1), one(-1)], 0.05)).toThrow(InvalidArgumentError);
  expect(() => cochranTest([one(1), one(Number.NaN)], 0.05)).toThrow(InvalidArgumentError);
  expect(() => cochranTest([one(1), { variance: 1, degreesOfFreedom: 0 }], 0.05)).toThrow(
    InvalidArgumentError,
  );
  expect(() => cochranCriticalValue(3, 1, 1, 0.05)).toThrow(InvalidArgumentError);
  expect(() => cochranCriticalValue(3, 1, 3, 0)).toThrow(InvalidArgumentError);
});
