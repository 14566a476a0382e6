import { type Stock, stockFor, tryStock } from "@tapewise/coverage";
import { atLeast, atMost, everything } from "@tapewise/intervals";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { chartOf, counted, crew, torsoChart, uniform } from "./crew.ts";

const stock = (...call: Parameters<typeof stockFor>): Stock => unwrap(stockFor(...call));
const counts = ({ sizes }: Stock) => sizes.map(({ count }) => count);
const halves = chartOf({ S: { "torso-length": atMost(430) }, M: { "torso-length": atLeast(430) } });

describe("by hand", () => {
  // Four members, half and half: 0 to 4 of one size have the chances 1, 4, 6, 4 and 1 of 16.
  test("each size by itself, Bonferroni", () => {
    // A level of 0.9 for each: three are enough with 15/16 = 0.9375. Both together: 14/16.
    const each = stock(halves, crew(), { members: 4, chance: 0.8, rule: "each-size" });
    expect(counts(each)).toEqual([3, 3]);
    expect(each.chance).toBeCloseTo(14 / 16, 12);
    expect(each.assignment).toBe("best-size");
    // A level of 0.95 needs all four.
    expect(counts(stock(halves, crew(), { members: 4, chance: 0.9, rule: "each-size" }))).toEqual([4, 4]);
  });

  test("as few as possible", () => {
    // (3, 3) is enough with 14/16; (2, 3) only when one or two take the first, 10/16.
    const few = stock(halves, crew(), { members: 4, chance: 0.8 });
    expect(counts(few)).toEqual([3, 3]);
    expect(few.total).toBe(6);
    expect(few.chance).toBeCloseTo(14 / 16, 12);
    // (2, 3) or (3, 2): 10/16 = 0.625.
    expect(stock(halves, crew(), { members: 4, chance: 0.6 }).total).toBe(5);
  });

  test("whom both sizes fit needs one pack, whichever", () => {
    const either = chartOf({ S: { "torso-length": everything }, M: { "torso-length": everything } });
    const any = stock(either, crew(), { members: 7, chance: 0.99 });
    expect(any.total).toBe(7);
    expect(any.assignment).toBe("any-that-fits");
    // Everybody takes the first by name.
    expect(counts(stock(either, crew(), { members: 7, chance: 0.99, rule: "each-size" }))).toEqual([0, 7]);
  });

  test("nothing is stocked for people whom no size fits, and they are told", () => {
    const few = stock(torsoChart({ S: [400, 410], M: [410, 420] }), uniform(), { members: 10, chance: 0.9 });
    expect(few.expectedUnserved).toBeCloseTo(8, 12);
    const none = stock(torsoChart({ S: [100, 110] }), counted([430]), { members: 10, chance: 0.9 });
    expect([none.total, none.chance, none.expectedUnserved]).toEqual([0, 1, 10]);
  });
});

describe("against crews that are drawn", () => {
  const overlapping = torsoChart({ XS: [360, 400], S: [385, 430], M: [415, 460], L: [445, 500] });

  test.each([["flexible"], ["each-size"]] as const)("%s", (rule) => {
    const found = stock(overlapping, crew(), { members: 30, chance: 0.9, rule });
    const tried = unwrap(
      tryStock(overlapping, crew(), { members: 30, counts: counts(found), trials: 4000, seed: 5 }),
    );
    expect(found.chance).toBeGreaterThanOrEqual(0.9);
    // Drawn crews swap freely: what is right for the best sizes alone errs on the safe side.
    expect(tried.enough).toBeGreaterThan(found.chance - 4 * Math.sqrt((0.9 * 0.1) / 4000));
    if (rule === "flexible") {
      expect(found.assignment).toBe("any-that-fits");
      expect(Math.abs(tried.enough - found.chance)).toBeLessThan(4 * Math.sqrt((0.9 * 0.1) / 4000));
    }
  });

  test("who could have three sizes is held to two, which errs on the safe side", () => {
    const wide = torsoChart({ S: [360, 450], M: [390, 470], L: [410, 500] });
    const found = stock(wide, crew(), { members: 20, chance: 0.9 });
    expect(found.assignment).toBe("two-sizes");
    const tried = unwrap(tryStock(wide, crew(), { members: 20, counts: counts(found), trials: 2000 }));
    expect(tried.enough).toBeGreaterThan(found.chance - 4 * Math.sqrt((0.9 * 0.1) / 2000));
  });
});

test("many members are stocked for size by size", () => {
  const many = stock(halves, crew(), { members: 1000, chance: 0.95 });
  expect(many.assignment).toBe("best-size");
  // Level 0.975: 500 + 1.96 √250 = 530.99, so 531 by the normal approximation with its correction.
  expect(counts(many)).toEqual([531, 531]);
});

test("a programmer's mistakes throw", () => {
  for (const request of [
    { members: 0, chance: 0.9 },
    { members: 2.5, chance: 0.9 },
    { members: 5, chance: 1 },
    { members: 5, chance: Number.NaN },
  ]) {
    expect(() => stockFor(halves, crew(), request)).toThrow(InvalidArgumentError);
  }
});
