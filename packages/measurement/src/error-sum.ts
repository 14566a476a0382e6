import { type MethodError, varianceOf } from "./method-error.ts";
import { type KnownVariance, poolSpread } from "./pool-spread.ts";
import { roundingCorrelation } from "./rounding-correlation.ts";
import { scatterBehind, shownVariance } from "./scatter-behind.ts";
import { combineUncertainties } from "./welch-satterthwaite.ts";

/** What a set of readings brings to its error budget. */
export interface ReadingSummary {
  readonly count: number;
  /** Sample standard deviation in mm; absent for one reading. */
  readonly sampleMm?: number;
  /** The step in mm that the readings are rounded to; 0 for none. */
  readonly stepMm: number;
}

/** What the errors of the mean of some readings add up to. Variances in mm². */
export interface ErrorSum {
  /** Whether the readings have a say in how far they scatter. */
  readonly isSampled: boolean;
  /** What changes from reading to reading: as the method has it, and as it is taken to be here. */
  readonly methodRepeat: number;
  readonly repeat: number;
  /** The spread that readings show among themselves, rounding in it. */
  readonly pooled: KnownVariance;
  /** How strongly the roundings of two readings go together, and what rounding leaves in the mean. */
  readonly together: number;
  readonly roundingOfMean: number;
  readonly uncertaintyMm: number;
  readonly degreesOfFreedom: number;
  readonly lastingMm: number;
  readonly perReadingMm: number;
}

/**
 * Adds up the errors of the mean of some readings: apart from the lines of the budget, because whoever only plans
 * needs no lines.
 *
 * What changes from reading to reading is the sample spread pooled with the method's; the rounding
 * that the sample already holds is taken out of it, so that it counts once.
 */
export function sumErrors({ count, stepMm, sampleMm = 0 }: ReadingSummary, method: MethodError): ErrorSum {
  const rounding = stepMm ** 2 / 12;
  const methodRepeat = varianceOf(method.repeat);
  const pooled = poolSpread(
    { variance: shownVariance(methodRepeat, stepMm), degreesOfFreedom: method.repeatDegreesOfFreedom },
    { variance: sampleMm ** 2, degreesOfFreedom: count - 1 },
  );
  const isSampled = count > 1 && method.repeatDegreesOfFreedom < Number.POSITIVE_INFINITY;
  const repeat = isSampled ? scatterBehind(pooled.variance, stepMm) : methodRepeat;
  const together = stepMm === 0 ? 0 : roundingCorrelation(Math.sqrt(repeat), stepMm);
  const roundingOfMean = (rounding * (1 + (count - 1) * together)) / count;
  // The causes of the pooled spread rise and fall together, so they are one component here.
  const components: readonly KnownVariance[] = [
    { variance: repeat / count, degreesOfFreedom: pooled.degreesOfFreedom },
    { variance: roundingOfMean, degreesOfFreedom: Number.POSITIVE_INFINITY },
    ...method.lasting,
  ];
  const { uncertainty, degreesOfFreedom } = combineUncertainties(
    components.map((one) => ({
      uncertainty: Math.sqrt(one.variance),
      degreesOfFreedom: one.degreesOfFreedom,
    })),
  );
  return {
    isSampled,
    methodRepeat,
    repeat,
    pooled,
    together,
    roundingOfMean,
    uncertaintyMm: uncertainty,
    degreesOfFreedom,
    lastingMm: Math.sqrt(varianceOf(method.lasting) + rounding * together),
    perReadingMm: Math.sqrt(repeat + rounding * (1 - together)),
  };
}
