/** Where a density of offset and log width is looked at: a rectangle of points. */
export interface Points {
  readonly offsetsMm: Float64Array;
  readonly logWidths: Float64Array;
}

/** A density of offset and log width at points; the weights sum to 1, the offset runs fastest. */
export interface Located extends Points {
  readonly weights: Float64Array;
  /** Logarithm of the integral of what was looked at, before the weights were made to sum to 1. */
  readonly logIntegral: number;
}

/** The rectangle outside which nothing is looked for, centred on 0. */
export interface Reach {
  readonly reachMm: number;
  readonly logReach: number;
}

const OFFSETS = 61;
const WIDTHS = 31;
/** Half-width of the rectangle that is settled on, in standard deviations. */
const HALF = 7;
const MOST_PASSES = 12;

/**
 * Finds the rectangle that holds a density, from the whole reach inwards, and the weights of points in it. With some
 * four points a standard deviation the sums are as good as integrals (trapezoidal rule, which for a bell
 * errs by about exp(−2π²·16)).
 */
export function localise(logDensity: (points: Points) => Float64Array, reach: Reach): Located {
  let offset = { centre: 0, half: reach.reachMm };
  let width = { centre: 0, half: reach.logReach };
  for (let pass = 0; ; pass += 1) {
    const points = { offsetsMm: spread(offset, OFFSETS), logWidths: spread(width, WIDTHS) };
    const located = { ...points, ...normalised(logDensity(points), stepOf(points)) };
    const nextOffset = narrowed(offset, marginal(located, "offset"), points.offsetsMm, reach.reachMm);
    const nextWidth = narrowed(width, marginal(located, "width"), points.logWidths, reach.logReach);
    if ((nextOffset === offset && nextWidth === width) || pass === MOST_PASSES) return located;
    offset = nextOffset;
    width = nextWidth;
  }
}

/** The weights of one of the two alone. */
export function marginal({ weights, offsetsMm, logWidths }: Located, of: "offset" | "width"): Float64Array {
  const columns = offsetsMm.length;
  const sums = new Float64Array(of === "offset" ? columns : logWidths.length);
  for (let at = 0; at < weights.length; at += 1) {
    const place = of === "offset" ? at % columns : Math.floor(at / columns);
    sums[place] = (sums[place] as number) + (weights[at] as number);
  }
  return sums;
}

interface Stretch {
  readonly centre: number;
  readonly half: number;
}

function spread({ centre, half }: Stretch, count: number): Float64Array {
  const middle = (count - 1) / 2;
  return Float64Array.from({ length: count }, (_, i) => centre + half * ((i - middle) / middle));
}

/** A stretch that fits the density better, or the same one where it fits well enough. */
function narrowed(stretch: Stretch, weights: Float64Array, points: Float64Array, reach: number): Stretch {
  const mean = weights.reduce((sum, weight, i) => sum + weight * (points[i] as number), 0);
  const variance = weights.reduce((sum, weight, i) => sum + weight * ((points[i] as number) - mean) ** 2, 0);
  const step = (2 * stretch.half) / (points.length - 1);
  const half = HALF * Math.max(Math.sqrt(variance), step);
  if (half > stretch.half * 0.75) return stretch;
  const low = Math.max(-reach, mean - half);
  const high = Math.min(reach, mean + half);
  return { centre: (low + high) / 2, half: (high - low) / 2 };
}

/** The area, in mm, that a point stands for. */
function stepOf({ offsetsMm, logWidths }: Points): number {
  const step = (points: Float64Array): number => (points[1] as number) - (points[0] as number);
  return step(offsetsMm) * step(logWidths);
}

function normalised(logs: Float64Array, step: number): Pick<Located, "weights" | "logIntegral"> {
  const highest = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const weights = logs.map((log) => Math.exp(log - highest));
  const total = weights.reduce((a, b) => a + b, 0);
  return { weights: weights.map((weight) => weight / total), logIntegral: highest + Math.log(total * step) };
}
