import { type Interval, interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";

/**
 * The intervals that single nominal lengths stand for, in the order of the lengths; `undefined` for a
 * length that has no neighbour to measure the spacing from. All in millimetres.
 *
 * The rule. Going out from a nominal length, its interval ends at the first of: the midpoint to the
 * next nominal length; the nearest edge of a range that another size states. Ranges that contain the
 * length itself set no bound. Where nothing lies on one side, the interval reaches as far there as on
 * the other, half the spacing, though never below zero. So nominal lengths alone tile the axis without gap or overlap, and among
 * ranges they fill the gaps. Equal lengths have equal intervals; the order of the sizes plays no part.
 *
 * It is a rule of this library (assumption): a chart of single lengths does not say where one size ends.
 *
 * @throws {@link InvalidArgumentError} when a length is not a finite number.
 *
 * @example
 * ```ts
 * import { inferNominalIntervals } from "@tapewise/charts";
 * import { formatInterval, interval } from "@tapewise/intervals";
 * inferNominalIntervals([420, 460, 520]).map((each) => each && formatInterval(each)); // => ["[400, 440]", "[440, 490]", "[490, 550]"]
 * inferNominalIntervals([460], [interval(380, 430)]).map((each) => each && formatInterval(each)); // => ["[430, 490]"]
 * inferNominalIntervals([460]); // => [undefined]
 * ```
 */
export function inferNominalIntervals(
  nominalsMm: readonly number[],
  ranges: readonly Interval[] = [],
): readonly (Interval | undefined)[] {
  nominalsMm.forEach((nominal, position) => {
    if (Number.isFinite(nominal)) return;
    throw new InvalidArgumentError(`nominalsMm[${position}]`, nominal, "a finite length in millimetres");
  });
  const lengths = sorted(new Set(nominalsMm));
  const ends = sorted(new Set(ranges.map((range) => range.to)));
  const starts = sorted(new Set(ranges.map((range) => range.from)));
  return nominalsMm.map((nominal) => {
    const below = [midpointTo(nominal, lastBelow(lengths, nominal)), lastBelow(ends, nominal)];
    const above = [midpointTo(nominal, firstAbove(lengths, nominal)), firstAbove(starts, nominal)];
    const lower = largest(below);
    const upper = smallest(above);
    if (lower === undefined && upper === undefined) return undefined;
    return interval(
      Math.max(0, lower ?? mirror(nominal, upper ?? nominal)),
      upper ?? mirror(nominal, lower ?? nominal),
    );
  });
}

function sorted(values: Iterable<number>): readonly number[] {
  return Array.from(values).sort((a, b) => a - b);
}

/** How many of the sorted values are below `limit`, or not above it. */
function countBelow(values: readonly number[], limit: number, orEqual: boolean): number {
  let low = 0;
  let high = values.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const value = values[middle] ?? limit;
    if (value < limit || (orEqual && value === limit)) low = middle + 1;
    else high = middle;
  }
  return low;
}

function lastBelow(values: readonly number[], limit: number): number | undefined {
  return finite(values[countBelow(values, limit, false) - 1]);
}

function firstAbove(values: readonly number[], limit: number): number | undefined {
  return finite(values[countBelow(values, limit, true)]);
}

function finite(value: number | undefined): number | undefined {
  return value === undefined || !Number.isFinite(value) ? undefined : value;
}

function midpointTo(nominal: number, neighbour: number | undefined): number | undefined {
  return neighbour === undefined ? undefined : (nominal + neighbour) / 2;
}

function mirror(nominal: number, bound: number): number {
  return nominal + (nominal - bound);
}

function largest(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? undefined : Math.max(...known);
}

function smallest(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? undefined : Math.min(...known);
}
