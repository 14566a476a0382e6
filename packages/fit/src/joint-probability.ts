import type { Interval } from "@tapewise/intervals";
import { normalQuantile, studentTCdf } from "@tapewise/statistics";
import { normalBoxProbability, type Scores } from "./normal-box-probability.ts";
import { probabilityInside } from "./probability-inside.ts";
import type { UncertainLength } from "./uncertain-length.ts";

/** One dimension held against one interval. */
export interface Side {
  readonly length: UncertainLength;
  readonly interval: Interval;
}

/**
 * Probability that every length lies in its interval.
 *
 * Independent lengths multiply. Correlated ones are joined by a Gaussian copula: each length keeps its
 * own distribution (Student's t), and the normal scores depend on each other as the lengths do.
 */
export function jointProbability(
  sides: readonly Side[],
  correlation: (i: number, j: number) => number,
): number {
  let probability = 1;
  for (const group of groupsOf(sides, correlation)) {
    const [only, ...others] = group;
    if (only === undefined) continue;
    probability *=
      others.length === 0
        ? probabilityInside(only.side.length, only.side.interval)
        : normalBoxProbability(
            group.map(({ side }) => scoresOf(side)),
            group.map((a) => group.map((b) => (a === b ? 1 : correlation(a.index, b.index)))),
          );
  }
  return Math.min(1, Math.max(0, probability));
}

interface Member {
  readonly index: number;
  readonly side: Side;
}

/** Sides that depend on each other, directly or through others, stand in one group. */
function groupsOf(
  sides: readonly Side[],
  correlation: (i: number, j: number) => number,
): readonly (readonly Member[])[] {
  let groups: (readonly Member[])[] = [];
  sides.forEach((side, index) => {
    // A length that is known exactly depends on nothing.
    const isNear = (group: readonly Member[]) =>
      side.length.sdMm > 0 &&
      group.some((one) => one.side.length.sdMm > 0 && correlation(one.index, index) !== 0);
    const near = groups.filter(isNear);
    groups = [...groups.filter((group) => !near.includes(group)), [...near.flat(), { index, side }]];
  });
  return groups;
}

/** The ends of the interval as standard scores of the length; as normal scores where it is not normal. */
function scoresOf({ length, interval }: Side): Scores {
  const { meanMm, sdMm, degreesOfFreedom } = length;
  const score = (endMm: number) => {
    const t = (endMm - meanMm) / sdMm;
    if (degreesOfFreedom === Number.POSITIVE_INFINITY || !Number.isFinite(t)) return t;
    // From the nearer tail, so that nothing is lost by rounding to 1.
    const z = normalQuantile(studentTCdf(-Math.abs(t), degreesOfFreedom));
    return t < 0 ? z : -z;
  };
  return [score(interval.from), score(interval.to)];
}
