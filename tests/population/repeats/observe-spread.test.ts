import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { observeSpread } from "../../../packages/population/src/repeats/observe-spread.ts";

describe("observeSpread", () => {
  test("takes a stated error from the observed variance", () => {
    // Mean 400, variance 100; less 36.
    const spread = observeSpread({ values: [390, 400, 410], errorSd: 6 });
    expect(spread.mean).toBe(400);
    expect(spread.betweenSd).toBeCloseTo(8, 12);
    expect(spread.withinSd).toBe(6);
    // 100 √(2/2) / (2 · 8)
    expect(spread.betweenError).toBeCloseTo(6.25, 12);
    expect(spread.perPerson).toEqual([[390], [400], [410]]);
  });

  test("leaves nothing where the error explains everything", () => {
    const spread = observeSpread({ values: [390, 400, 410], errorSd: 12 });
    expect(spread.betweenSd).toBe(0);
    expect("betweenError" in spread).toBe(false);
  });

  test("sees the error in repeats", () => {
    const people = [
      [400, 404],
      [420, 416],
      [440, 440],
    ];
    expect(observeSpread({ people }).withinSd).toBeCloseTo(Math.sqrt(16 / 3), 12);
  });

  test("refuses errors and values that are none", () => {
    expect(() => observeSpread({ values: [390, 400, 410], errorSd: -1 })).toThrow(InvalidArgumentError);
    expect(() => observeSpread({ values: [390, 400, 410], errorSd: Number.NaN })).toThrow(
      InvalidArgumentError,
    );
    expect(() => observeSpread({ values: [390, 400], errorSd: 1 })).toThrow(InvalidArgumentError);
  });
});
