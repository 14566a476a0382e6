import type { Random } from "@tapewise/statistics";

/** Forecasts in the order in which they were made, the trials of one person next to each other. */
export interface Forecasts {
  /** The person's place, from 0 on. */
  readonly person: readonly number[];
  /** Stated probability that the picked size fits. */
  readonly stated: readonly number[];
  /** 1 where it does, else 0. */
  readonly observed: readonly number[];
}

/** Stated against observed among some of the forecasts. */
export interface Group {
  readonly count: number;
  readonly stated: number;
  readonly observed: number;
}

/** How stated probabilities compare with what came of them. */
export interface Calibration {
  readonly overall: Group;
  /** Standard error of the overall difference, clustered by person. */
  readonly overallError: number;
  /** Ten groups of equal size, from the lowest stated probabilities to the highest. */
  readonly deciles: readonly Group[];
  /** Expected calibration error: mean over the deciles of the absolute difference. */
  readonly ece: number;
  /** What perfectly calibrated forecasts of the same probabilities show, each trial on its own. */
  readonly ifPerfect: Spread;
  /** The same where the trials of one person go together as they do here. */
  readonly ifPerfectByPerson: Spread;
}

/** Mean and 95th percentile of simulated figures. */
export interface Spread {
  readonly mean: number;
  readonly upper: number;
}

const GROUPS = 10;

/**
 * Holds forecasts against outcomes. The sampling error of the expected calibration error is simulated twice
 * under perfect calibration: outcomes drawn anew from the stated probabilities, and what was left over of
 * each person in each group, less the group's mean, with a random sign for the person (wild cluster
 * bootstrap, Rademacher weights: Cameron, Gelbach & Miller 2008).
 */
export function calibrate(forecasts: Forecasts, draws: number, random: Random): Calibration {
  const { person, stated, observed } = forecasts;
  const total = stated.length;
  const order = stated.map((_, i) => i).sort((a, b) => (stated[a] ?? 0) - (stated[b] ?? 0) || a - b);
  const groupOf = new Uint8Array(total);
  order.forEach((trial, place) => {
    groupOf[trial] = Math.floor((place * GROUPS) / total);
  });
  const count = new Float64Array(GROUPS);
  const sumStated = new Float64Array(GROUPS);
  const sumObserved = new Float64Array(GROUPS);
  for (let i = 0; i < total; i += 1) {
    const group = groupOf[i] ?? 0;
    count[group] = (count[group] ?? 0) + 1;
    sumStated[group] = (sumStated[group] ?? 0) + (stated[i] ?? 0);
    sumObserved[group] = (sumObserved[group] ?? 0) + (observed[i] ?? 0);
  }
  const gap = sumObserved.map((sum, g) => sum - (sumStated[g] ?? 0));
  const ofAll = gap.reduce((a, b) => a + b, 0) / total;

  // What each person leaves over, in all and group by group, as runs of trials of one person.
  const leftOver: { readonly group: number; readonly person: number; sum: number }[] = [];
  const byPerson = new Map<number, number>();
  const place = new Map<number, number>();
  for (let i = 0; i < total; i += 1) {
    const who = person[i] ?? 0;
    const group = groupOf[i] ?? 0;
    const rest = (observed[i] ?? 0) - (stated[i] ?? 0);
    byPerson.set(who, (byPerson.get(who) ?? 0) + rest - ofAll);
    const key = who * GROUPS + group;
    const centred = rest - (gap[group] ?? 0) / (count[group] ?? 1);
    const known = leftOver[place.get(key) ?? -1];
    if (known !== undefined) known.sum += centred;
    else {
      place.set(key, leftOver.length);
      leftOver.push({ group, person: who, sum: centred });
    }
  }
  let squares = 0;
  for (const sum of byPerson.values()) squares += sum ** 2;

  const perfect: number[] = [];
  const perfectByPerson: number[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    const fresh = new Float64Array(GROUPS);
    for (let i = 0; i < total; i += 1) {
      const p = stated[i] ?? 0;
      const group = groupOf[i] ?? 0;
      fresh[group] = (fresh[group] ?? 0) + (random.uniform() < p ? 1 - p : -p);
    }
    perfect.push(sumAbsolute(fresh) / total);
    const wild = new Float64Array(GROUPS);
    const signs = Array.from(byPerson, () => (random.uniform() < 0.5 ? -1 : 1));
    for (const { group, person: who, sum } of leftOver) {
      const sign = signs[who] ?? 0;
      wild[group] = (wild[group] ?? 0) + sign * sum;
    }
    perfectByPerson.push(sumAbsolute(wild) / total);
  }
  const group = (n: number, statedSum: number, observedSum: number): Group => ({
    count: n,
    stated: statedSum / n,
    observed: observedSum / n,
  });
  return {
    overall: group(total, sumOf(sumStated), sumOf(sumObserved)),
    overallError: Math.sqrt(squares) / total,
    deciles: Array.from(count, (n, g) => group(n, sumStated[g] ?? 0, sumObserved[g] ?? 0)),
    ece: sumAbsolute(gap) / total,
    ifPerfect: spreadOf(perfect),
    ifPerfectByPerson: spreadOf(perfectByPerson),
  };
}

function sumOf(values: Float64Array): number {
  return values.reduce((a, b) => a + b, 0);
}

function sumAbsolute(values: Float64Array): number {
  return values.reduce((sum, value) => sum + Math.abs(value), 0);
}

function spreadOf(values: number[]): Spread {
  const sorted = values.toSorted((a, b) => a - b);
  return {
    mean: sorted.reduce((a, b) => a + b, 0) / sorted.length,
    upper: sorted[Math.min(sorted.length - 1, Math.floor(0.95 * sorted.length))] ?? Number.NaN,
  };
}
