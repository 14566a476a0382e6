import type { Learned, LearnedChart } from "./learned.ts";
import { type Located, marginal } from "./localise.ts";

/** Ends of the middle 90 %. */
const LOWER = 0.05;
const UPPER = 0.95;

/** The figures of a density of offset and log width. */
export function summariseLocated(
  located: Located,
  outcomes: number,
  asPrintedProbability: number,
): LearnedChart {
  const { weights, offsetsMm, logWidths } = located;
  const factors = logWidths.map(Math.exp);
  const offset = summarise(offsetsMm, marginal(located, "offset"));
  const ofWidth = marginal(located, "width");
  const plain = summarise(logWidths, ofWidth);
  const [arithmetic, sd] = moments(factors, ofWidth);
  let covarianceMm = 0;
  for (let at = 0; at < weights.length; at += 1) {
    const i = at % offsetsMm.length;
    const j = Math.floor(at / offsetsMm.length);
    covarianceMm +=
      (weights[at] as number) *
      ((offsetsMm[i] as number) - offset.mean) *
      ((factors[j] as number) - arithmetic);
  }
  return {
    outcomes,
    offsetMm: offset,
    widthFactor: {
      mean: Math.exp(plain.mean),
      sd,
      lower: Math.exp(plain.lower),
      upper: Math.exp(plain.upper),
    },
    covarianceMm,
    asPrintedProbability,
  };
}

function summarise(points: Float64Array, weights: Float64Array): Learned {
  const [mean, sd] = moments(points, weights);
  return { mean, sd, lower: quantile(points, weights, LOWER), upper: quantile(points, weights, UPPER) };
}

function moments(points: Float64Array, weights: Float64Array): readonly [mean: number, sd: number] {
  const mean = weights.reduce((sum, weight, i) => sum + weight * (points[i] as number), 0);
  const variance = weights.reduce((sum, weight, i) => sum + weight * ((points[i] as number) - mean) ** 2, 0);
  return [mean, Math.sqrt(variance)];
}

/** Each point's weight is spread evenly over the step around it. */
function quantile(points: Float64Array, weights: Float64Array, p: number): number {
  const step = (points[1] as number) - (points[0] as number);
  let below = 0;
  for (let i = 0; i < points.length; i += 1) {
    const weight = weights[i] as number;
    if (below + weight >= p && weight > 0) {
      return (points[i] as number) + step * ((p - below) / weight - 0.5);
    }
    below += weight;
  }
  return points.at(-1) as number;
}
