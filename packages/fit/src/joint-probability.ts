import type { Interval } from "@tapewise/intervals";
import { bivariateNormalBox, integrateFromZero, normalPdf, normalQuantile } from "@tapewise/statistics";
import { cdf, holdAgainst, type UncertainLength } from "./location-scale.ts";

/** One dimension held against one interval. */
export interface Side {
  readonly length: UncertainLength;
  readonly interval: Interval;
}

/** Correlations weaker than this change no probability by more than about 1e-4 and count as none. */
const NEGLIGIBLE = 1e-3;

/**
 * Probability that every length lies in its interval.
 *
 * Independent lengths multiply. Correlated ones are joined by a Gaussian copula: margins stay exact
 * (Student's t), the dependence is that of the posterior. Two are exact; each further one adds a
 * Gauss–Legendre quadrature over its standard score.
 */
export function jointProbability(
  sides: readonly Side[],
  correlation: (i: number, j: number) => number,
): number {
  let probability = 1;
  for (const group of groupsOf(sides.length, correlation)) {
    if (group.length === 1) {
      for (const i of group) {
        const side = sides[i];
        if (side !== undefined) probability *= holdAgainst(side.length, side.interval).inside;
      }
    } else {
      const scores = group.flatMap((i) => (sides[i] === undefined ? [] : [scoresOf(sides[i])]));
      const matrix = group.map((i) => group.map((j) => (i === j ? 1 : correlation(i, j))));
      probability *= boxProbability(scores, matrix);
    }
  }
  return Math.min(1, Math.max(0, probability));
}

/** Sides that depend on each other, directly or through others, stand in one group. */
function groupsOf(
  count: number,
  correlation: (i: number, j: number) => number,
): readonly (readonly number[])[] {
  const groups: number[][] = [];
  for (let i = 0; i < count; i += 1) {
    const near = groups.filter((group) => group.some((j) => Math.abs(correlation(i, j)) >= NEGLIGIBLE));
    const merged = [...near.flat(), i];
    for (const group of near) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups;
}

type Scores = readonly [number, number];

function scoresOf(side: Side): Scores {
  const { length, interval } = side;
  const score = (lengthMm: number) => {
    if (!Number.isFinite(lengthMm)) return lengthMm;
    const z = (lengthMm - length.meanMm) / length.sdMm;
    if (length.degreesOfFreedom === Number.POSITIVE_INFINITY) return z;
    // From the nearer tail, so that nothing is lost by rounding to 1.
    const score = normalQuantile(cdf(-Math.abs(z), length.degreesOfFreedom));
    return z < 0 ? score : -score;
  };
  return [score(interval.from), score(interval.to)];
}

function boxProbability(scores: readonly Scores[], matrix: readonly (readonly number[])[]): number {
  const [first, second, ...others] = scores;
  if (first === undefined) return 1;
  if (second === undefined) return holdScore(first);
  const rho = matrix[0]?.[1] ?? 0;
  if (others.length === 0) return bivariateNormalBox(first[0], first[1], second[0], second[1], rho);
  const rest = scores.slice(1);
  const from = Math.max(first[0], -FARTHEST);
  const to = Math.min(first[1], FARTHEST);
  if (from >= to) return 0;
  return integrate(from, to, (x) => {
    // Conditional on the first score, the rest is normal again with these means, scales and correlations.
    const row = matrix[0] ?? [];
    const scale = rest.map((_, i) => Math.sqrt(Math.max(1e-12, 1 - (row[i + 1] ?? 0) ** 2)));
    const shifted = rest.map((bounds, i): Scores => {
      const mean = (row[i + 1] ?? 0) * x;
      return [(bounds[0] - mean) / (scale[i] ?? 1), (bounds[1] - mean) / (scale[i] ?? 1)];
    });
    const partial = rest.map((_, i) =>
      rest.map((_, j) => {
        if (i === j) return 1;
        const direct = (matrix[i + 1]?.[j + 1] ?? 0) - (row[i + 1] ?? 0) * (row[j + 1] ?? 0);
        return Math.max(-1, Math.min(1, direct / ((scale[i] ?? 1) * (scale[j] ?? 1))));
      }),
    );
    return normalPdf(x) * boxProbability(shifted, partial);
  });
}

const FARTHEST = 9;

function holdScore(bounds: Scores): number {
  return holdAgainst(
    { meanMm: 0, sdMm: 1, degreesOfFreedom: Number.POSITIVE_INFINITY },
    { from: bounds[0], to: bounds[1], fromClosed: false, toClosed: false },
  ).inside;
}

function integrate(from: number, to: number, density: (x: number) => number): number {
  // Panels of at most two standard deviations keep the rule at full accuracy.
  const panels = Math.max(1, Math.ceil((to - from) / 2));
  const width = (to - from) / panels;
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    sum += integrateFromZero((u) => density(from + panel * width + u), width);
  }
  return sum;
}
