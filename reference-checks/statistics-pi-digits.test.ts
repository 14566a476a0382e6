import {
  momentsOf,
  type QuantileType,
  sampleQuantile,
  summarise,
  summariseMoments,
} from "@tapewise/statistics";
import { expect, test } from "vitest";
import { against } from "./table/against.ts";

/**
 * NIST StRD, univariate summary statistics, PiDigits: the first 5000 digits of π, one a value. Certified mean and
 * standard deviation; the exact ones recomputed with fractions and mpmath. The data of NIST differ from π in one digit:
 * 3 stands at position 956 (from 0) where π has 8, and the certified values belong to those data.
 */
const COUNT = 5000;
const certified = { mean: "4.53480000000000", sd: "2.86733906028871" };
const exact = { mean: 4.5348, sd: 2.867339060288708 };
/** Of the true digits of π, recomputed with fractions and mpmath. */
const truth = { mean: 4.5358, sd: 2.867675552187612 };

/** Digits of π by J. Machin's formula (1706), π = 16 arctan(1/5) − 4 arctan(1/239), in whole numbers. */
function digitsOfPi(count: number): number[] {
  const unit = 10n ** BigInt(count + 10);
  const arctanOfInverse = (x: bigint): bigint => {
    let [power, sum, sign] = [unit / x, 0n, 1n];
    for (let n = 1n; power > 0n; n += 2n) {
      sum += (sign * power) / n;
      power /= x * x;
      sign = -sign;
    }
    return sum;
  };
  const pi = 16n * arctanOfInverse(5n) - 4n * arctanOfInverse(239n);
  return Array.from(String(pi).slice(0, count), Number);
}

const piDigits = against({
  of: ["statistics.summarise", "statistics.summariseMoments"],
  source: "NIST StRD, univariate summary statistics, PiDigits",
  origin: "certified (15 digits)",
  why: "half a unit of the fifteenth digit",
});

test("PiDigits", () => {
  const digits = digitsOfPi(COUNT);
  expect(digits.slice(0, 10)).toEqual([3, 1, 4, 1, 5, 9, 2, 6, 5, 3]);
  const nist = digits.with(956, 3);
  for (const { mean, sd = 0 } of [summarise(nist), summariseMoments(momentsOf(nist))]) {
    piDigits.relative(mean, certified.mean, 5e-15);
    piDigits.relative(sd, certified.sd, 5e-15);
    expect(Math.abs(mean - exact.mean)).toBeLessThanOrEqual(2 ** -50);
    // A sum of 5000 squares, each rounded.
    expect(Math.abs(sd / exact.sd - 1)).toBeLessThan(5000 * 2 ** -53);
  }
  const { mean, sd = 0 } = summarise(digits);
  expect(Math.abs(mean - truth.mean)).toBeLessThanOrEqual(2 ** -50);
  expect(Math.abs(sd / truth.sd - 1)).toBeLessThan(5000 * 2 ** -53);
});

test("all nine quantiles of a single value are that value (Hyndman & Fan 1996; R 4.2.2)", () => {
  const types: readonly QuantileType[] = [1, 2, 3, 4, 5, 6, 7, 8, 9];
  for (const type of types)
    for (const p of [0, 0.01, 1 / 3, 0.5, 0.99, 1]) expect(sampleQuantile([7], p, type)).toBe(7);
});
