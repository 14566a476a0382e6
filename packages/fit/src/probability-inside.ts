import { contains, type Interval } from "@tapewise/intervals";
import { normalIntervalProbability, studentTIntervalProbability } from "@tapewise/statistics";
import type { UncertainLength } from "./uncertain-length.ts";

/** Probability that an uncertain length lies in an interval. */
export function probabilityInside(length: UncertainLength, interval: Interval): number {
  const { meanMm, sdMm, degreesOfFreedom: df } = length;
  if (sdMm === 0) return contains(interval, meanMm) ? 1 : 0;
  const lower = (interval.from - meanMm) / sdMm;
  const upper = (interval.to - meanMm) / sdMm;
  const inside =
    df === Number.POSITIVE_INFINITY
      ? normalIntervalProbability(lower, upper)
      : studentTIntervalProbability(lower, upper, df);
  // Two halves that are each rounded may add up to a little more than everything.
  return Math.min(1, inside);
}
