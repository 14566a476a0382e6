import { defaultPolicy, type Recommendation, recommend } from "@tapewise/fit";
import { contains, distanceTo } from "@tapewise/intervals";
import { type Estimate, type Prior, parseEstimate } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { referencePrior } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { type LengthReading, millimetres } from "@tapewise/units";
import { calibrate } from "./calibration.ts";
import { drawTrial } from "./draw-readings.ts";
import { type Density, fitExactly, leastMisfit, likeliest, likelihoodOf } from "./exact-posterior.ts";
import type { StudiedPerson } from "./people.ts";
import { otherHalfDensities } from "./residual-density.ts";
import {
  type Cell,
  type ChartSetting,
  charts,
  type ErrorSetting,
  errors,
  type ReadingSetting,
  readingAt,
  statedError,
} from "./settings.ts";
import { firstMatch, nearestCentre } from "./simple-rules.ts";
import { type CellTally, emptyTally, type LibraryRule, libraryRules, type Rule, rules } from "./tally.ts";

/** What a study is made with. */
export interface StudyOptions {
  readonly repeats: number;
  readonly seed: number;
  /** Whether true lengths are dithered within the rounding of the survey's heights. */
  readonly dither: boolean;
  /** Draws for the sampling error of the calibration. */
  readonly draws: number;
  /** Whether to try stated errors that are not the true ones. */
  readonly mistaken: boolean;
  readonly wants: (cell: Cell) => boolean;
}

/** Numbers of readings at which wrongly stated errors are tried. */
const MISTAKEN_COUNTS: readonly number[] = [1, 3];

/** Draws for the sampling error where what is measured is far beyond it. */
const FEW_DRAWS = 20;

/** Another reading is not on offer here, so the library need not weigh one; picks and probabilities stay. */
const policy = { ...defaultPolicy, mostFurtherReadings: 0 };

/** What is collected of one chart while trials go by. */
interface Collected {
  readonly chart: ChartSetting;
  readonly served: Float64Array;
  readonly rules: Record<Rule, ReturnType<typeof emptyTally>>;
  readonly forecasts: ReadonlyMap<string, Collector>;
}

interface Collector {
  readonly person: number[];
  readonly stated: number[];
  readonly observed: number[];
}

/** Runs the cells of one way of reading: the same readings for all rules and all charts. */
export function runSetting(
  people: readonly StudiedPerson[],
  setting: ReadingSetting,
  options: StudyOptions,
): readonly CellTally[] {
  const { error, rounding, count } = setting;
  const cellOf = (chart: ChartSetting): Cell => ({
    error: error.name,
    rounding: rounding.name,
    readings: count,
    chart: chart.name,
  });
  const wanted = charts.filter((chart) => options.wants(cellOf(chart)));
  if (wanted.length === 0) return [];
  const tries = options.mistaken && MISTAKEN_COUNTS.includes(count);
  const others = tries ? errors.filter((other) => other !== error) : [];
  const collected = wanted.map(
    (chart): Collected => ({
      chart,
      served: new Float64Array(people.length),
      rules: everyRule(() => emptyTally(people.length)),
      forecasts: new Map(
        [...libraryRules, ...others.map(({ name }) => name)].map((key) => [
          key,
          { person: [], stated: [], observed: [] },
        ]),
      ),
    }),
  );
  const likelihood = likelihoodOf(setting);
  const otherHalf = otherHalfDensities(people, options.seed);
  const reading = readingAt(rounding);
  // With a stated error and no stature an answer depends on the mean of the readings alone: asked once.
  const answers = memory<Recommendation>();

  people.forEach((person, who) => {
    const priors = priorsFor(person);
    const densities: Record<"floor" | "floor-other-half", Density> = {
      floor: normalDensity(priors["cut-stature"]),
      "floor-other-half": otherHalf(person),
    };
    for (let repeat = 0; repeat < options.repeats; repeat += 1) {
      const { trueMm, marks } = drawTrial(person, setting, repeat, options.seed, options.dither);
      const readings = marks.map(reading);
      const estimate = estimateOf(readings, setting, error);
      const ofReadings = likelihood(marks);
      for (const { chart, served, rules: tallies, forecasts } of collected) {
        const { intervals } = chart;
        const fitsSome = intervals.some((interval) => contains(interval, trueMm)) ? 1 : 0;
        served[who] = (served[who] ?? 0) + fitsSome;
        const take = (rule: Rule, pick: number): void => {
          const interval = intervals[pick];
          if (interval === undefined) throw new Error(`${rule} took no size of ${chart.name}`);
          const { wrong, misfitMm } = tallies[rule];
          const isWrong = fitsSome === 1 && !contains(interval, trueMm) ? 1 : 0;
          wrong[who] = (wrong[who] ?? 0) + isWrong;
          misfitMm[who] = (misfitMm[who] ?? 0) + distanceTo(interval, trueMm);
        };
        const forecast = (key: string, answer: Recommendation): number => {
          const pick = chart.chart.sizes.findIndex((size) => size.name === answer.pick);
          const interval = intervals[pick];
          const collector = forecasts.get(key);
          if (interval === undefined || collector === undefined) throw new Error(`no place for ${key}`);
          collector.person.push(who);
          collector.stated.push(answer.probability);
          collector.observed.push(contains(interval, trueMm) ? 1 : 0);
          return pick;
        };
        take("first-match", firstMatch(estimate.mm, intervals));
        take("nearest-centre", nearestCentre(estimate.mm, intervals));
        for (const rule of libraryRules) {
          const answer = () => answerFor(estimate, priors[rule], chart);
          const key = `${chart.name} ${rule === "cut" ? person.cut : ""} ${estimate.mm}`;
          take(rule, forecast(rule, rule === "cut-stature" ? answer() : answers.get(key, answer)));
        }
        for (const rule of ["floor", "floor-other-half"] as const) {
          const fits = fitExactly(ofReadings, densities[rule], intervals);
          take(rule, likeliest(fits));
          if (rule === "floor") take("floor-misfit", leastMisfit(fits));
        }
        for (const other of others) {
          const mistaken = estimateOf(readings, setting, other);
          forecast(other.name, answerFor(mistaken, priors["cut-stature"], chart));
        }
      }
    }
  });

  return collected.map(({ chart, served, rules: tallies, forecasts }): CellTally => {
    const cell = cellOf(chart);
    const assess = (key: string, draws: number) => {
      const random = createRandom(options.seed).fork(Object.values(cell).join(" ")).fork(key);
      const made = forecasts.get(key);
      if (made === undefined) throw new Error(`nothing was forecast for ${key}`);
      return calibrate(made, draws, random);
    };
    return {
      cell,
      hasOverlap: chart.hasOverlap,
      trials: people.length * options.repeats,
      served,
      rules: tallies,
      calibration: {
        "no-prior": assess("no-prior", FEW_DRAWS),
        cut: assess("cut", options.draws),
        "cut-stature": assess("cut-stature", options.draws),
      },
      mistaken: others.map(({ name }) => ({ stated: name, calibration: assess(name, FEW_DRAWS) })),
    };
  });
}

function memory<T>(): { readonly get: (key: string, make: () => T) => T } {
  const known = new Map<string, T>();
  return {
    get: (key, make) => {
      const value = known.get(key) ?? make();
      known.set(key, value);
      return value;
    },
  };
}

function everyRule<T>(make: () => T): Record<Rule, T> {
  return Object.fromEntries(rules.map((rule) => [rule, make()])) as Record<Rule, T>;
}

function priorsFor({ cut, statureMm }: StudiedPerson): Readonly<{
  "no-prior": undefined;
  cut: Prior;
  "cut-stature": Prior;
}> {
  return {
    "no-prior": undefined,
    cut: referencePrior({ cut }),
    "cut-stature": referencePrior({ cut, statureMm: millimetres(statureMm) }),
  } satisfies Record<LibraryRule, Prior | undefined>;
}

function estimateOf(
  readings: readonly LengthReading[],
  { rounding }: ReadingSetting,
  error: ErrorSetting,
): Estimate {
  return parseEstimate({ dimension: "torso-length", readings, error: statedError(error, rounding) });
}

function answerFor(estimate: Estimate, prior: Prior | undefined, chart: ChartSetting): Recommendation {
  const person = { estimates: [estimate], ...(prior === undefined ? {} : { prior }) };
  return unwrap(recommend(person, chart.chart, { unit: "cm", policy }));
}

/** The prior's density of the torso length, up to a factor. */
function normalDensity(prior: Prior): Density {
  const at = prior.dimensions.indexOf("torso-length");
  const mean = prior.meanMm[at] ?? Number.NaN;
  const variance = prior.covarianceMm2[at]?.[at] ?? Number.NaN;
  return (lengthMm) => Math.exp((-0.5 * (lengthMm - mean) ** 2) / variance);
}
