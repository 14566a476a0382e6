import type { Interval } from "@tapewise/intervals";
import { normalIntervalProbability } from "@tapewise/statistics";
import { least } from "./least.ts";
import type { ReadingSetting } from "./settings.ts";

/** How likely readings are, up to a factor, for lengths of whole mm from `fromMm` on. */
export interface Likelihood {
  readonly fromMm: number;
  readonly values: Float64Array;
}

/** A density, up to a factor, of true lengths in mm. */
export type Density = (lengthMm: number) => number;

/** Standard deviations of the mean of the readings beyond which nothing is left to count. */
const REACH = 7;

/**
 * The exact likelihood of a length given rounded readings. With m the length plus the error that all readings
 * share, a reading falls on mark r with probability Φ((r + q/2 − m)/σ) − Φ((r − q/2 − m)/σ); their product is
 * integrated over m by the trapezoidal rule with a step of 1 mm, which for a smooth bell of standard
 * deviation s is off by about exp(−2π² s²), nothing for s of 1.5 mm and more.
 */
export function likelihoodOf(setting: ReadingSetting): (marks: readonly number[]) => Likelihood {
  const { biasMm, noiseMm } = setting.error;
  const { stepMm } = setting.rounding;
  const tables = new Map<number, (middleMm: number) => number>();
  const ofMark = (mark: number) => {
    const known = tables.get(mark) ?? logProbability(mark * stepMm, stepMm, noiseMm);
    tables.set(mark, known);
    return known;
  };
  const kernel = Float64Array.from({ length: 400 }, (_, d) => Math.exp(-0.5 * (d / biasMm) ** 2));
  return (marks) => {
    const meanMm = (marks.reduce((sum, mark) => sum + mark, 0) / marks.length) * stepMm;
    const ofMean = noiseMm ** 2 / marks.length + stepMm ** 2 / 12;
    const middles = span(meanMm, REACH * Math.sqrt(ofMean));
    const lengths = span(meanMm, REACH * Math.sqrt(ofMean + biasMm ** 2));
    const logs = new Float64Array(middles.count);
    for (const mark of marks) {
      const table = ofMark(mark);
      for (let i = 0; i < logs.length; i += 1) logs[i] = (logs[i] ?? 0) + table(middles.fromMm + i);
    }
    const highest = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
    const weights = logs.map((log) => Math.exp(log - highest));
    const values = new Float64Array(lengths.count);
    for (let t = 0; t < values.length; t += 1) {
      let sum = 0;
      for (let i = 0; i < weights.length; i += 1) {
        const apart = Math.abs(middles.fromMm + i - lengths.fromMm - t);
        sum += (weights[i] ?? 0) * (kernel[apart] ?? 0);
      }
      values[t] = sum;
    }
    return { fromMm: lengths.fromMm, values };
  };
}

function span(centreMm: number, reachMm: number) {
  const fromMm = Math.floor(centreMm - reachMm);
  return { fromMm, count: Math.ceil(centreMm + reachMm) - fromMm + 1 };
}

function logProbability(markMm: number, stepMm: number, noiseMm: number): (middleMm: number) => number {
  const known = new Map<number, number>();
  return (middleMm) => {
    let log = known.get(middleMm);
    if (log === undefined) {
      const lower = (markMm - stepMm / 2 - middleMm) / noiseMm;
      log = Math.log(normalIntervalProbability(lower, lower + stepMm / noiseMm));
      known.set(middleMm, log);
    }
    return log;
  };
}

/** What the exact posterior says of one interval. */
export interface ExactFit {
  /** Probability that the length lies in it. */
  readonly chance: number;
  /** Expected distance to it, in mm. */
  readonly misfitMm: number;
}

/**
 * How the length fits each interval, by the exact posterior. Ends must be whole mm. The trapezoidal rule,
 * for probabilities with its first end correction (Euler–Maclaurin), the slope from the neighbours.
 */
export function fitExactly(
  likelihood: Likelihood,
  prior: Density,
  intervals: readonly Interval[],
): readonly ExactFit[] {
  const { fromMm, values } = likelihood;
  const posterior = values.map((value, i) => value * prior(fromMm + i));
  const at = (i: number) => posterior[i] ?? 0;
  const cumulative = new Float64Array(posterior.length);
  for (let i = 1; i < posterior.length; i += 1) {
    cumulative[i] = (cumulative[i - 1] ?? 0) + (at(i - 1) + at(i)) / 2;
  }
  const total = cumulative.at(-1) ?? 0;
  const below = (endMm: number): number => {
    if (!Number.isInteger(endMm)) throw new Error(`an end of ${endMm} mm is not on the grid`);
    const i = endMm - fromMm;
    if (i <= 0) return 0;
    if (i >= posterior.length - 1) return total;
    return (cumulative[i] ?? 0) - (at(i + 1) - at(i - 1)) / 24;
  };
  return intervals.map(({ from, to }) => {
    let misfit = 0;
    for (let i = 0; i < posterior.length; i += 1) {
      const length = fromMm + i;
      const distance = length < from ? from - length : length > to ? length - to : 0;
      misfit += at(i) * distance;
    }
    return { chance: (below(to) - below(from)) / total, misfitMm: misfit / total };
  });
}

/** Where no size has a chance of this much, the one with the least expected misfit is as good as any. */
const NO_CHANCE = 1e-6;

/** The likeliest size: no rule that knows as much gives fewer people a size that does not fit. */
export function likeliest(fits: readonly ExactFit[]): number {
  return fits.every(({ chance }) => chance < NO_CHANCE)
    ? leastMisfit(fits)
    : least(fits, ({ chance }) => -chance);
}

/** The size with the least expected misfit: no rule that knows as much has a smaller mean misfit. */
export function leastMisfit(fits: readonly ExactFit[]): number {
  return least(fits, ({ misfitMm }) => misfitMm);
}
