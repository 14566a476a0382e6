import { pickStretches } from "@tapewise/coverage";
import { describe, expect, test } from "vitest";

describe("pickStretches", () => {
  test("finds each change to a thousandth of a millimetre, and leaves both ends open", () => {
    const pickAt = (mm: number): number => (mm < 412.3456 ? 2 : mm < 455.5 ? 0 : 1);
    const stretches = pickStretches(pickAt, 350, 520, 3);
    expect(stretches.map(({ pick }) => pick)).toEqual([2, 0, 1]);
    expect(stretches[0]?.from).toBe(Number.NEGATIVE_INFINITY);
    expect(stretches[0]?.to).toBeCloseTo(412.3456, 3);
    expect(stretches[1]?.from).toBe(stretches[0]?.to);
    expect(stretches[1]?.to).toBeCloseTo(455.5, 3);
    expect(stretches[2]?.to).toBe(Number.POSITIVE_INFINITY);
  });

  test("one pick is one stretch", () => {
    expect(pickStretches(() => 4, 0, 10, 3)).toEqual([
      { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY, pick: 4 },
    ]);
  });
});
