import { InvalidArgumentError } from "@tapewise/outcome";
import { decimalDifferences, fUpperTail } from "@tapewise/statistics";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";

/** One line of an analysis of variance. */
export interface AnovaLine {
  readonly sumOfSquares: number;
  readonly degreesOfFreedom: number;
  readonly meanSquare: number;
}

/** A one-way analysis of variance. */
export interface OneWayAnova {
  readonly mean: number;
  readonly between: AnovaLine;
  readonly within: AnovaLine;
  /** The ratio of the mean squares. Absent where nothing scatters within the groups. */
  readonly f?: number;
  /** The chance of an F as large where the groups do not differ. */
  readonly pValue?: number;
  /** The share of the whole sum of squares that is between groups. Absent where all values are the same. */
  readonly rSquared?: number;
  /** Square root of the mean square within. */
  readonly residualSd: number;
}

/**
 * One-way analysis of variance of groups that may differ in size.
 *
 * Sums of squares are taken about means in two passes, with compensated sums, from differences to the first value that
 * are exact for the decimals as they were written: digits that all values share cost nothing, not even what a double
 * loses of them (the difficulty of the data of S. D. Simon & J. P. Lesage, 1989, Computational Statistics & Data
 * Analysis 8, 325–332).
 *
 * @param groups - two or more groups of one or more values each, one group with more than one
 * @throws {@link InvalidArgumentError} when there are too few groups or values, or a value or the sum of squares
 * is not finite.
 *
 * @example
 * ```ts
 * import { oneWayAnova } from "@tapewise/measurement";
 * const { between, within, f } = oneWayAnova([[430, 434], [440, 444]]);
 * between.sumOfSquares; // => 100
 * within.sumOfSquares; // => 16
 * f; // => 12.5
 * ```
 */
export function oneWayAnova(groups: readonly (readonly number[])[]): OneWayAnova {
  const count = requireGroups(groups);
  const differences = decimalDifferences(groups.flat());
  let taken = 0;
  const moved = groups.map(({ length }) => {
    taken += length;
    return differences.slice(taken - length, taken);
  });
  const centre = compensatedMean(moved.flat());
  const own = moved.map((values) => ({ values, mean: compensatedMean(values) }));
  const between = compensatedSum(own.map(({ values, mean }) => values.length * (mean - centre) ** 2));
  const within = compensatedSum(own.flatMap(({ values, mean }) => values.map((v) => (v - mean) ** 2)));
  const whole = between + within;
  if (!Number.isFinite(whole))
    throw new InvalidArgumentError("groups", groups, "values whose squares are finite");
  const betweenLine = lineOf(between, groups.length - 1);
  const withinLine = lineOf(within, count - groups.length);
  const f = betweenLine.meanSquare / withinLine.meanSquare;
  return {
    mean: (groups[0]?.[0] ?? 0) + centre,
    between: betweenLine,
    within: withinLine,
    ...(withinLine.meanSquare > 0
      ? { f, pValue: fUpperTail(f, betweenLine.degreesOfFreedom, withinLine.degreesOfFreedom) }
      : {}),
    ...(whole > 0 ? { rSquared: between / whole } : {}),
    residualSd: Math.sqrt(withinLine.meanSquare),
  };
}

/** A line from its sum of squares. */
export function lineOf(sumOfSquares: number, degreesOfFreedom: number): AnovaLine {
  return { sumOfSquares, degreesOfFreedom, meanSquare: sumOfSquares / degreesOfFreedom };
}

function requireGroups(groups: readonly (readonly number[])[]): number {
  if (!(Array.isArray(groups) && groups.length >= 2)) {
    throw new InvalidArgumentError("groups", groups, "two groups or more");
  }
  let count = 0;
  for (const [i, values] of groups.entries()) {
    if (!(Array.isArray(values) && values.length > 0)) {
      throw new InvalidArgumentError(`groups[${i}]`, values, "a list of one value or more");
    }
    for (const [j, value] of values.entries()) {
      if (!Number.isFinite(value)) {
        throw new InvalidArgumentError(`groups[${i}][${j}]`, value, "a finite number");
      }
    }
    count += values.length;
  }
  if (count === groups.length)
    throw new InvalidArgumentError("groups", groups, "a group of two values or more");
  return count;
}
