import { studentTQuantile, studentTUpperTail } from "@tapewise/statistics";
import type { BiasSlope } from "./bias-slope.ts";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";
import type { DifferencePoint } from "./interval-estimate.ts";

/** Least squares of difference on mean. Nothing where the means do not differ. */
export function fitBiasSlope(points: readonly DifferencePoint[], confidence: number): BiasSlope | undefined {
  const centre = compensatedMean(points.map(({ mean }) => mean));
  const level = compensatedMean(points.map(({ difference }) => difference));
  const squares = compensatedSum(points.map(({ mean }) => (mean - centre) ** 2));
  if (squares === 0) return undefined;
  const products = compensatedSum(
    points.map(({ mean, difference }) => (mean - centre) * (difference - level)),
  );
  const value = products / squares;
  const rest = compensatedSum(
    points.map(({ mean, difference }) => (difference - level - value * (mean - centre)) ** 2),
  );
  const degreesOfFreedom = points.length - 2;
  const residualSd = Math.sqrt(rest / degreesOfFreedom);
  const standardError = residualSd / Math.sqrt(squares);
  const reach = studentTQuantile((1 + confidence) / 2, degreesOfFreedom) * standardError;
  const isFlat = value === 0;
  return {
    value,
    lower: value - reach,
    upper: value + reach,
    standardError,
    intercept: level - value * centre,
    residualSd,
    degreesOfFreedom,
    // No scatter about the line: certain, unless there is no slope either.
    pValue: isFlat ? 1 : 2 * studentTUpperTail(Math.abs(value) / standardError, degreesOfFreedom),
  };
}
