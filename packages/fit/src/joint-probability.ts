import { type Interval, intersect } from "@tapewise/intervals";
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
  const members = mergeTwins(sides);
  if (members === undefined) return 0;
  let probability = 1;
  for (const group of groupsOf(members, correlation)) {
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

/** One length that is held against two intervals must lie in what they share; `undefined` where that is nothing. */
function mergeTwins(sides: readonly Side[]): readonly Member[] | undefined {
  const merged = new Map<UncertainLength, Member>();
  for (const [index, side] of sides.entries()) {
    const twin = merged.get(side.length);
    const interval = twin === undefined ? side.interval : intersect(twin.side.interval, side.interval);
    if (interval === undefined) return undefined;
    merged.set(side.length, { index: twin?.index ?? index, side: { ...side, interval } });
  }
  return [...merged.values()];
}

/** Sides that depend on each other, directly or through others, stand in one group. */
function groupsOf(
  members: readonly Member[],
  correlation: (i: number, j: number) => number,
): readonly (readonly Member[])[] {
  let groups: (readonly Member[])[] = [];
  for (const member of members) {
    // A length that is known exactly depends on nothing.
    const isNear = (one: Member) =>
      member.side.length.sdMm > 0 && one.side.length.sdMm > 0 && correlation(one.index, member.index) !== 0;
    const near = groups.filter((group) => group.some(isNear));
    groups = [...groups.filter((group) => !near.includes(group)), [...near.flat(), member]];
  }
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
