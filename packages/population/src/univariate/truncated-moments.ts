import { integrateFromZero, normalIntervalProbability, normalPdf } from "@tapewise/statistics";

/** Moments of a standard normal variable that is known to lie within bounds. */
export interface TruncatedMoments {
  /** The probability of lying there. */
  readonly mass: number;
  readonly mean: number;
  readonly variance: number;
  readonly skewness: number;
}

/**
 * Moments between `a` and `b`, which lie apart. Where the bounds leave the middle of the curve in place: the
 * closed form, mean (φ(a) − φ(b)) / P and so on (N. L. Johnson, S. Kotz & N. Balakrishnan, 1994, Continuous
 * Univariate Distributions 1, 13.10.1). In a tail, or over a narrow interval, its terms cancel; there the
 * moments of the distance from the inner bound are integrated, panel by panel, without any subtraction.
 */
export function truncatedMoments(a: number, b: number): TruncatedMoments {
  const mass = normalIntervalProbability(a, b);
  if (a >= 1 || b <= -1 || b - a < 2) return a + b >= 0 ? inTail(a, b, mass) : mirrored(inTail(-b, -a, mass));
  const low = normalPdf(a);
  const high = normalPdf(b);
  const mean = (low - high) / mass;
  const second = 1 + (times(a, low) - times(b, high)) / mass;
  const third = (times(a, times(a, low)) - times(b, times(b, high))) / mass + 2 * mean;
  const variance = second - mean * mean;
  const central = third - 3 * mean * second + 2 * mean ** 3;
  return { mass, mean, variance, skewness: central / variance ** 1.5 };
}

/** A bound times its density, which is 0 for an infinite bound. */
function times(bound: number, density: number): number {
  return density === 0 ? 0 : bound * density;
}

function mirrored(moments: TruncatedMoments): TruncatedMoments {
  return { ...moments, mean: -moments.mean, skewness: -moments.skewness };
}

const MOST_PANELS = 60;

/** The same where `a` is the bound nearer to the middle. The density falls as exp(−u (a + u/2)) from there. */
function inTail(a: number, b: number, mass: number): TruncatedMoments {
  const panel = Math.min(b - a, 1 / (Math.max(a, 0) + 1));
  const density = (u: number): number => Math.exp(-u * (a + u / 2));
  const overPanels = (f: (u: number) => number): number => {
    let sum = 0;
    for (let i = 0; i < MOST_PANELS && i * panel < b - a; i += 1) {
      const start = i * panel;
      const width = Math.min(panel, b - a - start);
      sum += integrateFromZero((u) => f(start + u) * density(start + u), width);
    }
    return sum;
  };
  const whole = overPanels(() => 1);
  const excess = overPanels((u) => u) / whole;
  const variance = overPanels((u) => (u - excess) ** 2) / whole;
  const central = overPanels((u) => (u - excess) ** 3) / whole;
  return { mass, mean: a + excess, variance, skewness: central / variance ** 1.5 };
}
