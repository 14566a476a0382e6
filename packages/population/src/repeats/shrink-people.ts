import type { QuantileType } from "@tapewise/statistics";
import { samplePercentile } from "../fitting/percentile.ts";
import type { ObservedSpread } from "./observe-spread.ts";

/** Percentiles of people's means, each drawn towards the common mean as far as its error makes it stray. */
export function shrinkPeople(
  spread: ObservedSpread,
  shares: readonly number[],
  type: QuantileType,
): readonly number[] {
  const { perPerson, mean, betweenSd, withinSd } = spread;
  const own = perPerson.map((readings) => {
    const count = readings.length;
    const observed = readings.reduce((sum, reading) => sum + reading, 0) / count;
    const widened = Math.sqrt(betweenSd ** 2 + withinSd ** 2 / count);
    return widened > 0 ? mean + (observed - mean) * (betweenSd / widened) : mean;
  });
  return shares.map((share) => samplePercentile(own, share, type));
}
