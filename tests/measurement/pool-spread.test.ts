import { poolSpread } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const known = Number.POSITIVE_INFINITY;

describe("poolSpread", () => {
  test("weighs by degrees of freedom, which add", () => {
    // (8 · 36 + 2 · 57) / 10 = 40.2
    const pooled = poolSpread({ variance: 36, degreesOfFreedom: 8 }, { variance: 57, degreesOfFreedom: 2 });
    expect(pooled.variance).toBeCloseTo(40.2, 12);
    expect(pooled.degreesOfFreedom).toBe(10);
  });

  test("two readings that agree do not make the method perfect", () => {
    // 8/9 · 36 = 32
    expect(
      poolSpread({ variance: 36, degreesOfFreedom: 8 }, { variance: 0, degreesOfFreedom: 1 }).variance,
    ).toBeCloseTo(32, 12);
  });

  test("one reading has no spread, whatever is passed for it", () => {
    const method = { variance: 36, degreesOfFreedom: 8 };
    expect(poolSpread(method, { variance: 999, degreesOfFreedom: 0 })).toEqual(method);
  });

  test("without a method the sample stands alone", () => {
    const sample = { variance: 57, degreesOfFreedom: 2 };
    expect(poolSpread({ variance: 0, degreesOfFreedom: 0 }, sample)).toEqual(sample);
  });

  test("what is known wins, and the method before the sample", () => {
    const method = { variance: 36, degreesOfFreedom: known };
    const sample = { variance: 57, degreesOfFreedom: known };
    expect(poolSpread(method, { variance: 57, degreesOfFreedom: 2 })).toEqual(method);
    expect(poolSpread({ variance: 36, degreesOfFreedom: 8 }, sample)).toEqual(sample);
    expect(poolSpread(method, sample)).toEqual(method);
  });

  test.each([
    [{ variance: -1, degreesOfFreedom: 1 }, "variance"],
    [{ variance: Number.NaN, degreesOfFreedom: 1 }, "variance"],
    [{ variance: known, degreesOfFreedom: 1 }, "variance"],
    [{ variance: 1, degreesOfFreedom: -1 }, "degreesOfFreedom"],
    [{ variance: 1, degreesOfFreedom: Number.NaN }, "degreesOfFreedom"],
  ])("refuses %o on either side", (part, argument) => {
    const good = { variance: 1, degreesOfFreedom: 1 };
    for (const pool of [() => poolSpread(part, good), () => poolSpread(good, part)]) {
      expect(pool).toThrow(InvalidArgumentError);
      expect(pool).toThrow(`${argument} must be`);
    }
  });

  test("refuses two spreads of which nothing is known", () => {
    const nothing = { variance: 1, degreesOfFreedom: 0 };
    expect(() => poolSpread(nothing, nothing)).toThrow("degreesOfFreedom must be above 0 in sum");
  });
});
