import {
  bivariateNormalBox,
  integrateFromZero,
  normalIntervalProbability,
  normalPdf,
} from "@tapewise/statistics";

/** The lower and the upper end of an interval as standard scores. */
export type Scores = readonly [lower: number, upper: number];

type Matrix = readonly (readonly number[])[];

/**
 * Probability that correlated standard normal variables lie in their intervals. Two are in closed form;
 * each further one adds a Gauss–Legendre quadrature over its score: to about 1e-10 up to four variables,
 * to about 1e-4 from five on, where the cost would grow too fast.
 */
export function normalBoxProbability(scores: readonly Scores[], correlations: Matrix): number {
  return boxProbability(scores, correlations, scores.length > 4 ? COARSE : FINE);
}

/** How a quadrature over one score is done: up to how many standard deviations, in panels how wide. */
interface Grid {
  readonly farthest: number;
  readonly widest: number;
}

/** Panels of at most two standard deviations keep the rule at full accuracy. */
const FINE: Grid = { farthest: 9, widest: 2 };
const COARSE: Grid = { farthest: 6, widest: 12 };

/** Keeps a scale above 0 where two variables are as good as one. */
const LEAST_VARIANCE = 1e-12;

function boxProbability(scores: readonly Scores[], correlations: Matrix, grid: Grid): number {
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
  return integrate(first, grid, (x) => {
    const given = scores.slice(1).map(([lower, upper], a): Scores => {
      const mean = (row[a] ?? 0) * x;
      const scale = scales[a] ?? 1;
      return [(lower - mean) / scale, (upper - mean) / scale];
    });
    return normalPdf(x) * boxProbability(given, partial, grid);
  });
}

function integrate([lower, upper]: Scores, grid: Grid, density: (x: number) => number): number {
  const from = Math.max(lower, -grid.farthest);
  const to = Math.min(upper, grid.farthest);
  if (from >= to) return 0;
  const panels = Math.ceil((to - from) / grid.widest);
  const width = (to - from) / panels;
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    sum += integrateFromZero((u) => density(from + panel * width + u), width);
  }
  return sum;
}
