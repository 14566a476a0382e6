import type { LearnedChart } from "./learned.ts";

/** How the ends of ranges move on average, over both possibilities: that the charts are as printed, or not. */
export interface ExpectedMove {
  readonly offsetMm: number;
  readonly offsetSdMm: number;
  readonly widthFactor: number;
  readonly widthSd: number;
  readonly covarianceMm: number;
}

/**
 * Mean and spread of offset and width factor where a maker may also print its charts as they are: with the chance p
 * that they are not, the offset has the mean p·m and the variance p·s² + p·(1 − p)·m² (law of total variance), and so
 * for the factor.
 *
 * @example
 * ```ts
 * import { expectedMove } from "@tapewise/afterwards";
 * const known = { mean: 8, sd: 0, lower: 8, upper: 8 };
 * const move = expectedMove({
 *   outcomes: 40, offsetMm: known, widthFactor: { ...known, mean: 1 }, covarianceMm: 0, asPrintedProbability: 0.5,
 * });
 * [move.offsetMm, move.offsetSdMm, move.widthFactor]; // => [4, 4, 1]
 * ```
 */
export function expectedMove(learned: LearnedChart): ExpectedMove {
  const chance = 1 - learned.asPrintedProbability;
  const { offsetMm, widthFactor, covarianceMm } = learned;
  const wider = widthFactor.mean - 1;
  const between = chance * (1 - chance);
  return {
    offsetMm: chance * offsetMm.mean,
    offsetSdMm: Math.sqrt(chance * offsetMm.sd ** 2 + between * offsetMm.mean ** 2),
    widthFactor: 1 + chance * wider,
    widthSd: Math.sqrt(chance * widthFactor.sd ** 2 + between * wider ** 2),
    covarianceMm: chance * covarianceMm + between * offsetMm.mean * wider,
  };
}
