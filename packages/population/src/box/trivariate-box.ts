import { bivariateNormalBox, integrateFromZero, normalPdf } from "@tapewise/statistics";
import { entry } from "../joint/gaussian.ts";
import type { BoxProbability } from "../joint/joint-model.ts";
import type { Bounds } from "./bounds.ts";

/** Beyond 9 standard deviations lies less than 10⁻¹⁸. */
const FAR = 9;
const PANEL = 3;
const TOLERANCE = 1e-11;
const DEEPEST = 40;

/**
 * P of a box of three variables: the bivariate box given one variable, integrated over that one. The two
 * most strongly correlated are taken together, since they would make the sharpest edges.
 */
export function trivariateBox({ lower, upper, correlation }: Bounds): BoxProbability {
  const r = (i: number, j: number): number => entry(correlation, i, j);
  const orders = [
    [0, 1, 2],
    [1, 0, 2],
    [2, 0, 1],
  ] as const;
  const [k, i, j] = orders.reduce((best, order) =>
    Math.abs(r(order[1], order[2])) > Math.abs(r(best[1], best[2])) ? order : best,
  );
  const [deviationI, deviationJ] = [i, j].map((other) => Math.sqrt((1 - r(k, other)) * (1 + r(k, other))));
  const [si = 1, sj = 1] = [deviationI, deviationJ];
  const partial = Math.min(Math.max((r(i, j) - r(k, i) * r(k, j)) / (si * sj), -1), 1);
  const at = (bound: number | undefined, x: number, other: number, deviation: number): number =>
    ((bound ?? 0) - r(k, other) * x) / deviation;
  const integrand = (x: number): number =>
    normalPdf(x) *
    bivariateNormalBox(
      at(lower[i], x, i, si),
      at(upper[i], x, i, si),
      at(lower[j], x, j, sj),
      at(upper[j], x, j, sj),
      partial,
    );

  let from = Math.max(lower[k] ?? 0, -FAR);
  let to = Math.min(upper[k] ?? 0, FAR);
  // A box all beyond: what there is lies at its inner edge.
  if (from >= FAR) to = Math.min(upper[k] ?? 0, from + 4);
  else if (to <= -FAR) from = Math.max(lower[k] ?? 0, to - 4);
  const panels = Math.max(1, Math.ceil((to - from) / PANEL));
  const width = (to - from) / panels;
  let probability = 0;
  let error = 1e-15;
  for (let panel = 0; panel < panels; panel += 1) {
    const part = refine(integrand, from + panel * width, width, undefined, 0);
    probability += part.probability;
    error += part.error;
  }
  return { probability: Math.min(Math.max(probability, 0), 1), error };
}

function over(f: (x: number) => number, from: number, width: number): number {
  return integrateFromZero((u) => f(from + u), width);
}

/** Halves a panel until its halves add up to the whole. */
function refine(
  f: (x: number) => number,
  from: number,
  width: number,
  known: number | undefined,
  depth: number,
): BoxProbability {
  const whole = known ?? over(f, from, width);
  const half = width / 2;
  const left = over(f, from, half);
  const right = over(f, from + half, half);
  const error = Math.abs(left + right - whole);
  if (error <= TOLERANCE || depth === DEEPEST) return { probability: left + right, error };
  const first = refine(f, from, half, left, depth + 1);
  const second = refine(f, from + half, half, right, depth + 1);
  return { probability: first.probability + second.probability, error: first.error + second.error };
}
