import { distanceTo, type Interval, midpoint } from "@tapewise/intervals";
import { least } from "./least.ts";

/** The first size of the chart that holds the mean of the readings; where none does, the nearest. */
export function firstMatch(meanMm: number, intervals: readonly Interval[]): number {
  return least(intervals, (interval) => distanceTo(interval, meanMm));
}

/** The size with the nearest centre among those that hold the mean; where none does, the nearest size. */
export function nearestCentre(meanMm: number, intervals: readonly Interval[]): number {
  const distance = Math.min(...intervals.map((interval) => distanceTo(interval, meanMm)));
  return least(intervals, (interval) =>
    distanceTo(interval, meanMm) > distance
      ? Number.POSITIVE_INFINITY
      : Math.abs(meanMm - (midpoint(interval) ?? Number.NaN)),
  );
}
