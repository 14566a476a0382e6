import { InvalidArgumentError } from "@tapewise/outcome";
import { normalQuantile } from "@tapewise/statistics";
import { requireShare } from "../require-number.ts";

/** How sure, and of whom. */
export interface DetectableChangeOptions {
  /** Two-sided; 0.95 where it is left out: MDC95. */
  readonly confidence?: number;
  /** Over how many subjects the change is averaged; 1, a single person, where it is left out. */
  readonly groupSize?: number;
  /** Readings that are averaged on each of the two occasions; 1 where it is left out. */
  readonly readingsEach?: number;
}

/**
 * Standard error of measurement from the standard deviation of a group and the reliability in it: SD √(1 − ICC)
 * (J. P. Weir, 2005, Journal of Strength and Conditioning Research 19, 231–240). Which error it holds goes by the
 * correlation: agreement with, consistency without lasting differences of measurers. An ICC from variance
 * components gives it directly as the square root of the error variance, which depends on no group.
 *
 * @param sd - standard deviation of single readings in the group, in any unit, from 0 up
 * @param reliability - intraclass correlation of single readings, from 0 to 1
 * @throws {@link InvalidArgumentError} when one of them is out of range.
 *
 * @example
 * ```ts
 * import { standardErrorOfMeasurement } from "@tapewise/measurement";
 * standardErrorOfMeasurement(30, 0.96).toFixed(6); // => "6.000000"
 * ```
 */
export function standardErrorOfMeasurement(sd: number, reliability: number): number {
  requireSpread("sd", sd);
  if (!(reliability >= 0 && reliability <= 1)) {
    throw new InvalidArgumentError("reliability", reliability, "a correlation from 0 to 1");
  }
  return sd * Math.sqrt(1 - reliability);
}

/**
 * The least change between two occasions that error alone would seldom show: z √2 SEM for a person, that over √n
 * for the mean of n (H. C. W. de Vet et al., 2006, Health and Quality of Life Outcomes 4, 54; J. P. Weir, 2005). The
 * error is the standard error of measurement or the technical error of measurement (TEM) of a single reading by the
 * same measurer or, with a TEM between measurers, by any. Equals the repeatability coefficient with an exact 1.96. An
 * error that lasts over both occasions falls out of the change and should not be in it.
 *
 * @param error - standard deviation of a single reading's error, in any unit, from 0 up
 * @returns the change in the unit of `error`
 * @throws {@link InvalidArgumentError} when an argument is out of range.
 *
 * @example
 * ```ts
 * import { minimalDetectableChange } from "@tapewise/measurement";
 * minimalDetectableChange(5).toFixed(2); // => "13.86"
 * minimalDetectableChange(5, { groupSize: 16 }).toFixed(2); // => "3.46"
 * ```
 */
export function minimalDetectableChange(error: number, options: DetectableChangeOptions = {}): number {
  const { confidence = 0.95, groupSize = 1, readingsEach = 1 } = options;
  requireSpread("error", error);
  requireShare("options.confidence", confidence);
  for (const [name, count] of Object.entries({ groupSize, readingsEach })) {
    if (!(Number.isSafeInteger(count) && count >= 1)) {
      throw new InvalidArgumentError(`options.${name}`, count, "a whole number from 1 up");
    }
  }
  return normalQuantile((1 + confidence) / 2) * error * Math.sqrt(2 / (groupSize * readingsEach));
}

function requireSpread(argument: string, value: number): void {
  if (!(value >= 0 && value <= 1e70)) {
    throw new InvalidArgumentError(argument, value, "a standard deviation from 0 up");
  }
}
