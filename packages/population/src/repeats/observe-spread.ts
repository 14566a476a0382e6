import { InvalidArgumentError } from "@tapewise/outcome";
import { summarise } from "@tapewise/statistics";
import { requireSample } from "../require-argument.ts";
import { varianceComponents } from "./variance-components.ts";

/**
 * Readings with an error: either repeated ones of each person, or one value of each with the standard deviation
 * of its error (for a single reading the technical error of measurement, for the mean of k that over √k).
 */
export type Readings =
  | { readonly people: readonly (readonly number[])[] }
  | { readonly values: readonly number[]; readonly errorSd: number };

/** Readings, and how people differ behind them. */
export interface ObservedSpread {
  readonly perPerson: readonly (readonly number[])[];
  /** The stated error of a value; absent where it is seen in repeats. */
  readonly errorSd: number | undefined;
  readonly mean: number;
  readonly meanError: number;
  readonly betweenSd: number;
  readonly betweenError?: number;
  /** The error of one reading. */
  readonly withinSd: number;
}

/** Parts the spread of readings into that of people and that of error: σ²b = s² − e² where e is stated. */
export function observeSpread(readings: Readings): ObservedSpread {
  if ("people" in readings) {
    const perPerson = readings.people;
    return { ...varianceComponents(perPerson), perPerson, errorSd: undefined };
  }
  const { values, errorSd } = readings;
  requireSample("readings.values", values, 3);
  if (!(errorSd >= 0 && Number.isFinite(errorSd))) {
    throw new InvalidArgumentError("readings.errorSd", errorSd, "a finite number from 0 up");
  }
  const { mean, sd = 0, n } = summarise(values);
  const variance = Math.max(sd ** 2 - errorSd ** 2, 0);
  const betweenSd = Math.sqrt(variance);
  const varianceError = sd ** 2 * Math.sqrt(2 / (n - 1));
  return {
    perPerson: values.map((value) => [value]),
    errorSd,
    mean,
    meanError: sd / Math.sqrt(n),
    betweenSd,
    ...(variance > 0 ? { betweenError: varianceError / (2 * betweenSd) } : {}),
    withinSd: errorSd,
  };
}
