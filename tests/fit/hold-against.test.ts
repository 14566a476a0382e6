import { holdAgainst } from "@tapewise/fit";
import { atLeast, atMost, everything, interval, point } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const normal = { meanMm: 430, sdMm: 10, degreesOfFreedom: Number.POSITIVE_INFINITY };

describe("a normal length", () => {
  // Φ(1) = 0.841345, Φ(2) = 0.977250, φ(0) = 0.398942: standard normal table, printed everywhere.
  test("one scale inside the upper end and two inside the lower one", () => {
    const { below, inside, above } = holdAgainst(normal, interval(410, 440));
    expect(below).toBeCloseTo(1 - 0.97725, 6);
    expect(above).toBeCloseTo(1 - 0.841345, 6);
    expect(inside).toBeCloseTo(0.841345 - 1 + 0.97725, 5);
  });

  test("on an end of a wide size it is off by φ(0) scales on average, as it is beyond that end half the time", () => {
    const { above, expectedMisfitMm } = holdAgainst(normal, atMost(430));
    expect(above).toBe(0.5);
    expect(expectedMisfitMm).toBeCloseTo(3.98942, 5);
  });

  test("far outside it is off by just the distance", () => {
    const { below, inside, above, expectedMisfitMm } = holdAgainst(normal, interval(600, 700));
    expect(below).toBe(1);
    for (const tail of [inside, above]) {
      expect(tail).toBeGreaterThan(0);
      expect(tail).toBeLessThan(1e-60);
    }
    expect(expectedMisfitMm).toBeCloseTo(170, 9);
  });

  test("a size without ends takes everybody, and a point nobody", () => {
    expect(holdAgainst(normal, everything)).toEqual({ below: 0, inside: 1, above: 0, expectedMisfitMm: 0 });
    const { below, inside, above } = holdAgainst(normal, point(430));
    expect([below, inside, above]).toEqual([0.5, 0, 0.5]);
  });

  test("an open end leaves one side", () => {
    const { below, inside, above } = holdAgainst(normal, atLeast(420));
    expect(below).toBeCloseTo(1 - 0.841345, 6);
    expect(inside).toBeCloseTo(0.841345, 6);
    expect(above).toBe(0);
  });
});

describe("a length by Student's t", () => {
  test("has the tails of the t table", () => {
    // t(0.975; 4) = 2.776 and t(0.95; 8) = 1.860: printed in every table of Student's t.
    const four = { ...normal, degreesOfFreedom: 4 };
    expect(holdAgainst(four, interval(430 - 27.76, 430 + 27.76)).inside).toBeCloseTo(0.95, 4);
    const eight = { ...normal, degreesOfFreedom: 8 };
    expect(holdAgainst(eight, atMost(448.6)).above).toBeCloseTo(0.05, 4);
  });

  test("is off by more on average than a normal one", () => {
    // At an end: s f(0) ν/(ν − 1), and with ν = 3 f(0) = 2/(π√3), so s·√3/π = 5.513289 mm for s = 10 mm.
    const three = holdAgainst({ ...normal, degreesOfFreedom: 3 }, atMost(430));
    expect(three.expectedMisfitMm).toBeCloseTo((10 * Math.sqrt(3)) / Math.PI, 9);
  });
});

describe("a length that is known", () => {
  const known = { meanMm: 430, sdMm: 0, degreesOfFreedom: Number.POSITIVE_INFINITY };

  test.each([
    ["inside", interval(400, 440), [0, 1, 0], 0],
    ["on a closed lower end", interval(430, 440), [0, 1, 0], 0],
    ["on a closed upper end", interval(400, 430), [0, 1, 0], 0],
    ["on an open lower end", interval(430, 440, { fromClosed: false }), [1, 0, 0], 0],
    ["on an open upper end", interval(400, 430, { toClosed: false }), [0, 0, 1], 0],
    ["on a point", point(430), [0, 1, 0], 0],
    ["below", interval(435, 440), [1, 0, 0], 5],
    ["above", interval(400, 418), [0, 0, 1], 12],
    ["in a size without ends", everything, [0, 1, 0], 0],
  ])("%s", (_, range, [below, inside, above], expectedMisfitMm) => {
    expect(holdAgainst(known, range)).toEqual({ below, inside, above, expectedMisfitMm });
  });
});

describe("figures that no length has", () => {
  test.each([
    ["meanMm", { meanMm: Number.NaN }],
    ["meanMm", { meanMm: Number.POSITIVE_INFINITY }],
    ["sdMm", { sdMm: -1 }],
    ["sdMm", { sdMm: Number.NaN }],
    ["sdMm", { sdMm: Number.POSITIVE_INFINITY }],
    ["degreesOfFreedom", { degreesOfFreedom: 1 }],
    ["degreesOfFreedom", { degreesOfFreedom: Number.NaN }],
  ])("%s is refused by name: %j", (argument, wrong) => {
    const hold = () => holdAgainst({ ...normal, ...wrong }, interval(400, 440));
    expect(hold).toThrow(InvalidArgumentError);
    expect(hold).toThrow(new RegExp(`^${argument} must be`));
  });
});

test("scales too small to divide by give no NaN", () => {
  const tiny = { meanMm: 430, sdMm: 5e-324, degreesOfFreedom: Number.POSITIVE_INFINITY };
  expect(holdAgainst(tiny, interval(435, 440))).toEqual({
    below: 1,
    inside: 0,
    above: 0,
    expectedMisfitMm: 5,
  });
  const t = { ...tiny, degreesOfFreedom: 8 };
  expect(holdAgainst(t, interval(400, 420))).toEqual({ below: 0, inside: 0, above: 1, expectedMisfitMm: 10 });
});
