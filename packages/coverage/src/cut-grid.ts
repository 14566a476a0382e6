import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { Distribution } from "@tapewise/population";

/** Every place where a range may begin, and what is needed of the people there. */
export interface CutGrid {
  readonly starts: readonly number[];
  readonly spanMm: number;
  /** Share of people within the range that begins at a place. */
  readonly within: Float64Array;
  /** Share of people that a range adds to one that begins earlier. */
  added(earlier: number, place: number): number;
  /** Expected distance in mm to ranges, of people below, between and above them. */
  misfitBelow(place: number): number;
  misfitBetween(earlier: number, place: number): number;
  misfitAbove(place: number): number;
}

/** Beyond this share at either end people are too few to matter for where sizes are cut. */
const TAIL = 1e-6;
const MOST_PLACES = 4000;

/** Nodes and weights of the three-point Gauss–Legendre rule on 0 to 1: ½ ∓ √0.15 and ½; 5/18 and 8/18. */
const NODES: readonly (readonly [node: number, weight: number])[] = [
  [0.1127016653792583, 5 / 18],
  [0.5, 8 / 18],
  [0.8872983346207417, 5 / 18],
];

/**
 * The grid of starts: whole multiples of the step, from where the first range would just reach the smallest people
 * to where the last one would begin at the tallest; at least so many as there are ranges.
 */
export function createCutGrid(
  distribution: Distribution,
  spanMm: number,
  stepMm: number,
  least: number,
): CutGrid {
  const first = Math.floor((distribution.quantile(TAIL) - spanMm) / stepMm);
  const last = Math.max(Math.ceil(distribution.quantile(1 - TAIL) / stepMm), first + least - 1);
  const count = last - first + 1;
  if (count > MOST_PLACES) {
    throw new InvalidArgumentError("stepMm", stepMm, `a step that leaves at most ${MOST_PLACES} places`);
  }
  const starts = Array.from({ length: count }, (_, i) => (first + i) * stepMm);
  const ends = starts.map((start) => start + spanMm);
  const middles = Array.from(
    { length: 2 * count - 1 },
    (_, sum) => ((2 * first + sum) * stepMm + spanMm) / 2,
  );
  const upTo = ends.map((end) => distribution.cumulative(end));
  const before = starts.map((start) =>
    distribution.probability(interval(Number.NEGATIVE_INFINITY, start, { toClosed: false })),
  );
  const integral = integrateCumulative(distribution, [...starts, ...ends, ...middles]);
  const ofStart = (place: number): number => integral.get(starts[place] ?? 0) ?? 0;
  const ofEnd = (place: number): number => integral.get(ends[place] ?? 0) ?? 0;
  const ofMiddle = middles.map((middle) => ({
    share: distribution.cumulative(middle),
    integral: integral.get(middle) ?? 0,
  }));
  return {
    starts,
    spanMm,
    within: Float64Array.from(starts, (_, i) => Math.max(0, (upTo[i] ?? 0) - (before[i] ?? 0))),
    added: (earlier, place) => {
      const reached = ends[earlier] ?? 0;
      const from = reached < (starts[place] ?? 0) ? (before[place] ?? 0) : (upTo[earlier] ?? 0);
      return Math.max(0, (upTo[place] ?? 0) - from);
    },
    misfitBelow: ofStart,
    misfitBetween: (earlier, place) => {
      const [low, high] = [ends[earlier] ?? 0, starts[place] ?? 0];
      if (high <= low) return 0;
      const middle = ofMiddle[earlier + place];
      if (middle === undefined) return 0;
      // ∫ (x − low) dF up to the middle and ∫ (high − x) dF from there, by parts with A = ∫ F.
      const half = (high - low) / 2;
      const upper = ofStart(place) - middle.integral - half * middle.share;
      return Math.max(0, half * middle.share - (middle.integral - ofEnd(earlier)) + upper);
    },
    misfitAbove: (place) => Math.max(0, distribution.mean - (ends[place] ?? 0) + ofEnd(place)),
  };
}

/** A(x) = ∫ F from below everybody to x, which is the expected distance of the people below x to x, at every point. */
function integrateCumulative(
  distribution: Distribution,
  points: readonly number[],
): ReadonlyMap<number, number> {
  const sorted = [...new Set(points)].sort((a, b) => a - b);
  const values = new Map<number, number>();
  let at = Math.min(sorted[0] ?? 0, distribution.quantile(1e-12));
  let sum = 0;
  for (const point of sorted) {
    // The stretch before the first point may be long; the others are at most half a step.
    const panels = Math.max(1, Math.ceil((point - at) / (distribution.sd / 8 || 1)));
    const width = (point - at) / panels;
    for (let k = 0; k < panels; k += 1) {
      for (const [node, weight] of NODES)
        sum += width * weight * distribution.cumulative(at + (k + node) * width);
    }
    at = point;
    values.set(point, sum);
  }
  return values;
}
