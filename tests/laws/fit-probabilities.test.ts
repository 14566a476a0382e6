import { fc, test } from "@fast-check/vitest";
import { holdAgainst, type UncertainLength } from "@tapewise/fit";
import { gaps, type Interval, interval, union } from "@tapewise/intervals";
import { studentTPdf } from "@tapewise/statistics";
import { expect } from "vitest";
import { anyRange, bodyMm, bounded, degrees, real, sdMm, shiftInterval } from "./fit-arbitraries.ts";

const length: fc.Arbitrary<UncertainLength> = fc.record({ meanMm: bodyMm, sdMm, degreesOfFreedom: degrees });
const exactly = (meanMm: number): UncertainLength => ({
  meanMm,
  sdMm: 0,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});
const normal = (meanMm: number, sd: number): UncertainLength => ({
  meanMm,
  sdMm: sd,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

/** Simpson's rule on many panels: slow, plain, and not what the package does. */
function simpson(f: (x: number) => number, from: number, to: number, panels = 4000): number {
  const h = (to - from) / (2 * panels);
  let sum = f(from) + f(to);
  for (let i = 1; i < 2 * panels; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

test.prop([length, anyRange])("law: below, inside and above add up to 1", (one, range) => {
  const { below, inside, above } = holdAgainst(one, range);
  expect(below + inside + above).toBeCloseTo(1, 12);
  for (const probability of [below, inside, above]) {
    expect(probability).toBeGreaterThanOrEqual(0);
    expect(probability).toBeLessThanOrEqual(1);
  }
});

test.prop([fc.array(bounded, { minLength: 1, maxLength: 4 }), length])(
  "law: disjoint sizes, the gaps between them, below and above share out all of probability",
  (ranges, one) => {
    const covered = union(...ranges);
    const inside = (range: Interval) => holdAgainst(one, range).inside;
    const first = covered.at(0);
    const last = covered.at(-1);
    if (first === undefined || last === undefined) throw new Error("a union of something is something");
    const sum =
      [...covered, ...gaps(covered)].reduce((total, range) => total + inside(range), 0) +
      holdAgainst(one, first).below +
      holdAgainst(one, last).above;
    expect(sum).toBeCloseTo(1, 11);
  },
);

test.prop([length, bounded, real(0, 50), real(0, 50)])(
  "law: widening an interval never lowers its probability nor raises its expected misfit",
  (one, range, down, up) => {
    const wider = interval(range.from - down, range.to + up);
    const before = holdAgainst(one, range);
    const after = holdAgainst(one, wider);
    expect(after.inside).toBeGreaterThanOrEqual(before.inside - 1e-14);
    expect(after.expectedMisfitMm).toBeLessThanOrEqual(before.expectedMisfitMm + 1e-11);
  },
);

test.prop([length, anyRange, real(-500, 500)])(
  "law: shifting length and interval together changes nothing",
  (one, range, by) => {
    const before = holdAgainst(one, range);
    const after = holdAgainst({ ...one, meanMm: one.meanMm + by }, shiftInterval(range, by));
    expect(after.inside).toBeCloseTo(before.inside, 9);
    expect(after.below).toBeCloseTo(before.below, 9);
    expect(after.expectedMisfitMm).toBeCloseTo(before.expectedMisfitMm, 9);
  },
);

test.prop([length, anyRange])(
  "law: another unit changes no probability and scales the misfit",
  (one, range) => {
    const inch = 25.4;
    const before = holdAgainst(one, range);
    const after = holdAgainst(
      { ...one, meanMm: one.meanMm / inch, sdMm: one.sdMm / inch },
      { ...range, from: range.from / inch, to: range.to / inch },
    );
    expect(after.inside).toBeCloseTo(before.inside, 10);
    expect(after.expectedMisfitMm * inch).toBeCloseTo(before.expectedMisfitMm, 9);
  },
);

test.prop([length, anyRange])("law: seen in a mirror, below and above change places", (one, range) => {
  const seen = holdAgainst({ ...one, meanMm: -one.meanMm }, interval(-range.to, -range.from));
  const { below, inside, above, expectedMisfitMm } = holdAgainst(one, range);
  expect(seen.below).toBeCloseTo(above, 13);
  expect(seen.above).toBeCloseTo(below, 13);
  expect(seen.inside).toBeCloseTo(inside, 13);
  expect(seen.expectedMisfitMm).toBeCloseTo(expectedMisfitMm, 11);
});

test.prop([bounded, real(0, 1), real(0.1, 20), real(1, 5), degrees])(
  "law: for a length expected inside, more uncertainty never raises the probability to be inside",
  (range, where, sd, factor, degreesOfFreedom) => {
    const meanMm = range.from + where * (range.to - range.from);
    const inside = (sdMm: number) => holdAgainst({ meanMm, sdMm, degreesOfFreedom }, range).inside;
    expect(inside(sd * factor)).toBeLessThanOrEqual(inside(sd) + 1e-14);
    expect(inside(sd)).toBeLessThanOrEqual(inside(0));
  },
);

test.prop([bodyMm, anyRange])(
  "law: with certainty the probabilities are 0 or 1, and the misfit is the distance",
  (mm, range) => {
    const { below, inside, above, expectedMisfitMm } = holdAgainst(exactly(mm), range);
    expect([below, inside, above].toSorted()).toEqual([0, 0, 1]);
    expect(inside).toBe(mm >= range.from && mm <= range.to ? 1 : 0);
    expect(expectedMisfitMm).toBe(Math.max(0, range.from - mm, mm - range.to));
  },
);

test.prop([bodyMm, real(5, 40), degrees, bounded])(
  "law: the expected misfit is above 0 unless the fit is certain, and at least the misfit of the mean",
  (meanMm, sd, degreesOfFreedom, range) => {
    const { expectedMisfitMm } = holdAgainst({ meanMm, sdMm: sd, degreesOfFreedom }, range);
    expect(expectedMisfitMm).toBeGreaterThan(0);
    // Jensen's inequality: the distance to an interval is convex.
    const distance = Math.max(0, range.from - meanMm, meanMm - range.to);
    expect(expectedMisfitMm).toBeGreaterThanOrEqual(distance - 1e-10);
  },
);

test.prop([bodyMm, real(1, 30), bounded], { numRuns: 40 })(
  "law: for a normal length the expected misfit is the integral of distance times density",
  (meanMm, sd, range) => {
    const density = (x: number) => Math.exp(-0.5 * ((x - meanMm) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI));
    const below = simpson(
      (x) => (range.from - x) * density(x),
      Math.min(meanMm, range.from) - 12 * sd,
      range.from,
    );
    const above = simpson((x) => (x - range.to) * density(x), range.to, Math.max(meanMm, range.to) + 12 * sd);
    expect(holdAgainst(normal(meanMm, sd), range).expectedMisfitMm).toBeCloseTo(below + above, 7);
  },
);

test.prop([bodyMm, real(1, 30), real(6, 40), bounded], { numRuns: 40 })(
  "law: for Student's t the expected misfit is the integral of distance times density",
  (meanMm, sd, df, range) => {
    const density = (x: number) => studentTPdf((x - meanMm) / sd, df) / sd;
    // Far tails on a grid that widens with the distance from the mean: x = mean + sd·sinh(v).
    const place = (v: number) => meanMm + sd * Math.sinh(v);
    const weight = (v: number) => density(place(v)) * sd * Math.cosh(v);
    const start = (end: number) => Math.asinh((end - meanMm) / sd);
    const below = simpson((v) => (range.from - place(v)) * weight(v), -14, start(range.from));
    const above = simpson((v) => (place(v) - range.to) * weight(v), start(range.to), 14);
    const expected = below + above;
    expect(holdAgainst({ meanMm, sdMm: sd, degreesOfFreedom: df }, range).expectedMisfitMm).toBeCloseTo(
      expected,
      6,
    );
  },
);

test.prop([bodyMm, sdMm, anyRange])(
  "law: with degrees of freedom beyond bounds Student's t becomes normal",
  (meanMm, sd, range) => {
    const limit = holdAgainst(normal(meanMm, sd), range);
    const gap = (df: number) => {
      const fit = holdAgainst({ meanMm, sdMm: sd, degreesOfFreedom: df }, range);
      return (
        Math.abs(fit.inside - limit.inside) + Math.abs(fit.expectedMisfitMm - limit.expectedMisfitMm) / sd
      );
    };
    expect(gap(1e4)).toBeLessThan(1e-3);
    expect(gap(1e6)).toBeLessThan(1e-5);
    expect(gap(1e9)).toBeLessThan(1e-7);
  },
);

const extreme = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constantFrom(0, -0, 5e-324, -5e-324, 1e308, -1e308, 1e-300),
);
const positive = extreme.map((x) => Math.abs(x));

test.prop([extreme, positive, fc.oneof(degrees, real(1.001, 1e300)), extreme, extreme], { numRuns: 1000 })(
  "law: whatever the finite figures, there is no NaN and no infinite misfit short of overflow",
  (meanMm, sd, degreesOfFreedom, a, b) => {
    const range = interval(Math.min(a, b), Math.max(a, b));
    const fit = holdAgainst({ meanMm, sdMm: sd, degreesOfFreedom }, range);
    for (const value of Object.values(fit)) expect(value).not.toBeNaN();
    expect(fit.below + fit.inside + fit.above).toBeCloseTo(1, 9);
    expect(fit.expectedMisfitMm).toBeGreaterThanOrEqual(0);
  },
);
