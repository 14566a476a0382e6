import type { Interval } from "@tapewise/intervals";
import {
  normalCdf,
  normalIntervalProbability,
  normalPdf,
  studentTCdf,
  studentTIntervalProbability,
  studentTPdf,
} from "@tapewise/statistics";

/** A length that is known as centre + scale × Student's t (normal where the degrees of freedom are infinite). */
export interface UncertainLength {
  readonly meanMm: number;
  /** Scale in mm; 0 means that the length is known. */
  readonly sdMm: number;
  /** Above 2, or `Infinity`. */
  readonly degreesOfFreedom: number;
}

/** How an uncertain length sits against an interval. The three probabilities sum to 1. */
export interface IntervalFit {
  readonly below: number;
  readonly inside: number;
  readonly above: number;
  /** Expected distance to the interval in mm. */
  readonly expectedMisfitMm: number;
}

/** Probabilities and the expected distance, in closed form. */
export function holdAgainst(length: UncertainLength, interval: Interval): IntervalFit {
  const { meanMm, sdMm, degreesOfFreedom: df } = length;
  if (sdMm === 0) return holdKnown(meanMm, interval);
  const lower = (interval.from - meanMm) / sdMm;
  const upper = (interval.to - meanMm) / sdMm;
  return {
    below: cdf(lower, df),
    inside:
      df === Number.POSITIVE_INFINITY
        ? normalIntervalProbability(lower, upper)
        : studentTIntervalProbability(lower, upper, df),
    above: cdf(-upper, df),
    expectedMisfitMm: sdMm * (partialExpectation(lower, df) + partialExpectation(-upper, df)),
  };
}

/** P(T ≤ z) of the standard variable. */
export function cdf(z: number, df: number): number {
  return df === Number.POSITIVE_INFINITY ? normalCdf(z) : studentTCdf(z, df);
}

function holdKnown(meanMm: number, interval: Interval): IntervalFit {
  const isBelow = meanMm < interval.from || (meanMm === interval.from && !interval.fromClosed);
  const isAbove = meanMm > interval.to || (meanMm === interval.to && !interval.toClosed);
  return {
    below: isBelow ? 1 : 0,
    inside: isBelow || isAbove ? 0 : 1,
    above: isAbove ? 1 : 0,
    expectedMisfitMm: Math.max(0, interval.from - meanMm, meanMm - interval.to),
  };
}

/**
 * E[max(0, z − T)] of the standard variable: z Φ(z) + φ(z) for the normal distribution, and
 * z F(z) + f(z) (ν + z²)/(ν − 1) for Student's t (integration by parts).
 */
function partialExpectation(z: number, df: number): number {
  if (z === Number.NEGATIVE_INFINITY) return 0;
  if (df === Number.POSITIVE_INFINITY) return Math.max(0, z * normalCdf(z) + normalPdf(z));
  // Beyond this point both terms are huge or vanish and only their leading parts are left.
  if (Math.abs(z) > 1e100) return Math.max(z, 0);
  return Math.max(0, z * studentTCdf(z, df) + (studentTPdf(z, df) * (df + z * z)) / (df - 1));
}
