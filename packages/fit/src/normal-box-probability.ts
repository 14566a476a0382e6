import {
  bivariateNormalBox,
  integrateFromZero,
  normalIntervalProbability,
  normalPdf,
} from "@tapewise/statistics";

/** The lower and the upper end of an interval as standard scores. */
export type Scores = readonly [lower: number, upper: number];

/**
 * Probability that correlated standard normal variables lie in their intervals, for at least one of
 * them. Two are in closed form; each further one adds a Gauss–Legendre quadrature over its score.
 */
export function normalBoxProbability(
  scores: readonly Scores[],
  correlations: readonly (readonly number[])[],
): number {
  const [first, second, ...others] = scores;
  if (first === undefined) return 1;
  if (second === undefined) return normalIntervalProbability(...first);
  const row = correlations[0]?.slice(1) ?? [];
  if (others.length === 0) return bivariateNormalBox(...first, ...second, row[0] ?? 0);

  // Given the score x of the first, the others are normal again: means, scales and correlations change.
  const scales = row.map((rho) => Math.sqrt(Math.max(LEAST_VARIANCE, 1 - rho * rho)));
  const partial = scales.map((scaleA, a) =>
    scales.map((scaleB, b) => {
      const direct = (correlations[a + 1]?.[b + 1] ?? 0) - (row[a] ?? 0) * (row[b] ?? 0);
      return a === b ? 1 : Math.max(-1, Math.min(1, direct / (scaleA * scaleB)));
    }),
  );
  const density = (x: number) => {
    const given = scores.slice(1).map(([lower, upper], a): Scores => {
      const mean = (row[a] ?? 0) * x;
      const scale = scales[a] ?? 1;
      return [(lower - mean) / scale, (upper - mean) / scale];
    });
    return normalPdf(x) * normalBoxProbability(given, partial);
  };
  const widest = others.length > DEEP ? Number.POSITIVE_INFINITY : 2;
  return integrate(Math.max(first[0], -FARTHEST), Math.min(first[1], FARTHEST), density, widest);
}

/** Keeps a scale above 0 where two variables are as good as one. */
const LEAST_VARIANCE = 1e-12;

/** Beyond so many standard deviations nothing is left that would count. */
const FARTHEST = 9;

/** With so many variables within, every panel costs: one has to do, at an error of about 1e-4. */
const DEEP = 2;

/** Panels of at most two standard deviations keep the rule at full accuracy. */
function integrate(from: number, to: number, density: (x: number) => number, widest: number): number {
  if (from >= to) return 0;
  const panels = Math.max(1, Math.ceil((to - from) / widest));
  const width = (to - from) / panels;
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    sum += integrateFromZero((u) => density(from + panel * width + u), width);
  }
  return sum;
}
