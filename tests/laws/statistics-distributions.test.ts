import { fc, test } from "@fast-check/vitest";
import {
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareUpperTail,
  fCdf,
  fQuantile,
  fUpperTail,
  incompleteBeta,
  logGamma,
  normalCdf,
  normalCdfInto,
  normalIntervalProbability,
  normalPdf,
  normalQuantile,
  normalUpperTail,
  studentTCdf,
  studentTIntervalProbability,
  studentTPdf,
  studentTQuantile,
  studentTUpperTail,
} from "@tapewise/statistics";
import { expect } from "vitest";
import { anyDf, anyShare, anyZ, nearZ, ordered, relativeGap } from "./statistics-arbitraries.ts";

const z = fc.oneof(anyZ, nearZ);
/** Bounds in thousandths, so that a mirrored or joined interval has the very same ends. */
const grid = fc.integer({ min: -9000, max: 9000 }).map((thousandths) => thousandths / 1000);
const positive = fc.double({ min: -20, max: 6, noNaN: true }).map(Math.exp);
const ROUNDING = 2 ** -53;

test.prop([z])("law: the normal distribution is the same seen from both sides", (x) => {
  expect(normalCdf(-x)).toBe(normalUpperTail(x));
  expect(normalPdf(-x)).toBe(normalPdf(x));
  expect(normalQuantile(0.5 - 0.49 * Math.tanh(x))).toBeCloseTo(
    -normalQuantile(0.5 + 0.49 * Math.tanh(x)),
    12,
  );
});

test.prop([z])("law: the two tails of the normal distribution add up to one", (x) => {
  expect(Math.abs(normalCdf(x) + normalUpperTail(x) - 1)).toBeLessThanOrEqual(4 * ROUNDING);
});

test.prop([ordered(z)])("law: the normal distribution function never falls", ([a, b]) => {
  expect(normalCdf(a)).toBeLessThanOrEqual(normalCdf(b) * (1 + 10 * ROUNDING));
});

test.prop([anyShare])("law: the normal distribution undoes its quantile", (p) => {
  const x = normalQuantile(p);
  // A relative error of x is blown up by x times the hazard, which is below x² + 1.
  expect(relativeGap(normalCdf(x), p)).toBeLessThanOrEqual((8 + 8 * (x * x + 1)) * ROUNDING);
});

test.prop([z])("law: the normal quantile undoes the distribution", (x) => {
  const tail = -Math.abs(x);
  expect(Math.abs(normalQuantile(normalCdf(tail)) - tail)).toBeLessThanOrEqual(
    (16 + 8 * Math.abs(x)) * ROUNDING,
  );
});

test.prop([ordered(grid), grid])("law: intervals of the normal distribution add up", ([a, b], c) => {
  const [low = a, middle = b, high = c] = [a, b, c].sort((x, y) => x - y);
  const parts = normalIntervalProbability(low, middle) + normalIntervalProbability(middle, high);
  expect(relativeGap(parts, normalIntervalProbability(low, high))).toBeLessThanOrEqual(24 * ROUNDING);
});

test.prop([z, anyDf])("law: an interval without an end is a tail", (x, df) => {
  const [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  expect(normalIntervalProbability(from, x)).toBe(normalCdf(x));
  expect(normalIntervalProbability(x, to)).toBe(normalUpperTail(x));
  expect(studentTIntervalProbability(from, x, df)).toBe(studentTCdf(x, df));
  expect(studentTIntervalProbability(x, to, df)).toBe(studentTUpperTail(x, df));
});

test.prop([ordered(fc.oneof(grid, z))])("law: a mirrored interval has the same probability", ([a, b]) => {
  expect(normalIntervalProbability(-b, -a)).toBe(normalIntervalProbability(a, b));
  expect(studentTIntervalProbability(-b, -a, 5)).toBe(studentTIntervalProbability(a, b, 5));
});

test.prop([z, fc.double({ min: 1e-9, max: 1e-6, noNaN: true })])(
  "law: the density is what a narrow interval holds for its width",
  (x, width) => {
    const to = x + width;
    const centre = x + (to - x) / 2;
    const share = normalIntervalProbability(x, to) / (to - x);
    // The density bends by (x² − 1)/24 widths squared, and its argument is rounded.
    expect(relativeGap(share, normalPdf(centre))).toBeLessThanOrEqual(1e-9);
  },
);

test.prop([fc.array(z, { maxLength: 50 })])(
  "law: the vector kernel gives the bits of the function on single numbers",
  (list) => {
    const out = new Float64Array(list.length);
    normalCdfInto(Float64Array.from(list), out);
    expect([...out]).toEqual(list.map(normalCdf));
  },
);

test.prop([z, anyDf])("law: Student's t is the same seen from both sides, and its tails add up", (t, df) => {
  expect(studentTCdf(-t, df)).toBe(studentTUpperTail(t, df));
  expect(studentTPdf(-t, df)).toBe(studentTPdf(t, df));
  expect(Math.abs(studentTCdf(t, df) + studentTUpperTail(t, df) - 1)).toBeLessThanOrEqual(4 * ROUNDING);
});

test.prop([ordered(z), anyDf])("law: Student's t never falls", ([a, b], df) => {
  expect(studentTCdf(a, df)).toBeLessThanOrEqual(studentTCdf(b, df) * (1 + 1e-12));
});

test.prop([anyShare, anyDf])("law: Student's t undoes its quantile", (p, df) => {
  expect(relativeGap(studentTCdf(studentTQuantile(p, df), df), p)).toBeLessThanOrEqual(1e-12);
});

test.prop([ordered(grid), grid, anyDf])("law: intervals of Student's t add up", ([a, b], c, df) => {
  const [low = a, middle = b, high = c] = [a, b, c].sort((x, y) => x - y);
  const parts = studentTIntervalProbability(low, middle, df) + studentTIntervalProbability(middle, high, df);
  expect(relativeGap(parts, studentTIntervalProbability(low, high, df))).toBeLessThanOrEqual(1e-12);
});

test.prop([grid, anyDf])("law: Student's t comes to the normal distribution as its degrees grow", (t, df) => {
  // The first term of Fisher's expansion, t(t² + 1) φ(t) / (4 df), is never above 0.158 / df.
  if (df >= 1) expect(Math.abs(studentTCdf(t, df) - normalCdf(t))).toBeLessThanOrEqual(0.16 / df + 1e-15);
  expect(studentTCdf(t, Number.POSITIVE_INFINITY)).toBe(normalCdf(t));
});

test.prop([grid, anyDf, fc.double({ min: 1.001, max: 100, noNaN: true })])(
  "law: fewer degrees of freedom give heavier tails",
  (t, df, factor) => {
    const far = Math.abs(t);
    expect(studentTUpperTail(far, df) * (1 + 1e-12)).toBeGreaterThanOrEqual(
      studentTUpperTail(far, df * factor),
    );
    expect(studentTUpperTail(far, df) * (1 + 1e-12)).toBeGreaterThanOrEqual(normalUpperTail(far));
  },
);

test.prop([positive, anyDf])("law: the tails of chi-square and of F add up to one", (x, df) => {
  const scaled = x * df;
  expect(chiSquareCdf(scaled, df) + chiSquareUpperTail(scaled, df)).toBeCloseTo(1, 12);
  expect(fCdf(x, df, 9) + fUpperTail(x, df, 9)).toBeCloseTo(1, 12);
});

test.prop([anyShare, anyDf, anyDf])("law: chi-square and F undo their quantiles", (p, df1, df2) => {
  expect(relativeGap(chiSquareCdf(chiSquareQuantile(p, df1), df1), p)).toBeLessThanOrEqual(1e-9);
  expect(relativeGap(fCdf(fQuantile(p, df1, df2), df1, df2), p)).toBeLessThanOrEqual(1e-9);
});

test.prop([grid])("law: the square of a normal variable is chi-square with one degree of freedom", (x) => {
  const within = normalIntervalProbability(-Math.abs(x), Math.abs(x));
  expect(relativeGap(chiSquareCdf(x * x, 1), within)).toBeLessThanOrEqual(1e-14);
});

test.prop([grid, anyDf])("law: the square of Student's t is F with one and its own degrees", (t, df) => {
  const within = studentTIntervalProbability(-Math.abs(t), Math.abs(t), df);
  expect(relativeGap(fCdf(t * t, 1, df), within)).toBeLessThanOrEqual(1e-11);
});

test.prop([positive, anyDf, anyDf])(
  "law: the reciprocal of F is F with its degrees exchanged",
  (x, df1, df2) => {
    const here = fCdf(x, df1, df2);
    const there = fUpperTail(1 / x, df2, df1);
    expect(Math.abs(here - there)).toBeLessThanOrEqual(1e-10);
  },
);

test.prop([fc.integer({ min: 0, max: 1024 }), positive, positive])(
  "law: the incomplete beta function and its mirror image add up to one",
  (parts, a, b) => {
    const x = parts / 1024;
    expect(incompleteBeta(x, a, b) + incompleteBeta(1 - x, b, a)).toBeCloseTo(1, 12);
  },
);

test.prop([positive])("law: the gamma function grows by its argument", (x) => {
  // ln Γ(x + 1) = ln Γ(x) + ln x; x + 1 is rounded, which ln Γ feels by its slope, about ln x.
  const size = Math.abs(logGamma(x)) + Math.abs(Math.log(x)) + (x + 1) * Math.log(x + 2);
  expect(Math.abs(logGamma(x + 1) - logGamma(x) - Math.log(x))).toBeLessThanOrEqual(8 * size * ROUNDING);
});
