/** A stretch of estimates, in mm, within which the same size is picked, by its place among the sizes. */
export interface PickStretch {
  readonly from: number;
  readonly to: number;
  readonly pick: number;
}

const CLOSE_MM = 1e-6;

/**
 * Where along the estimates which size is picked: the picks at points `stepMm` apart, and between two that differ the
 * change by bisection. The first and the last stretch go on without an end. All lengths in mm.
 *
 * A size that is picked on less than a step may be passed over.
 *
 * @example
 * ```ts
 * import { pickStretches } from "@tapewise/coverage";
 * const stretches = pickStretches((mm) => (mm < 430 ? 0 : 1), 300, 600, 4);
 * stretches.map(({ from, to, pick }) => [Math.round(from), Math.round(to), pick]);
 * // => [[-Infinity, 430, 0], [430, Infinity, 1]]
 * ```
 */
export function pickStretches(
  pickAt: (meanMm: number) => number,
  fromMm: number,
  toMm: number,
  stepMm: number,
): readonly PickStretch[] {
  const stretches: PickStretch[] = [];
  let begin = Number.NEGATIVE_INFINITY;
  let [at, pick] = [fromMm, pickAt(fromMm)];
  while (at < toMm) {
    const next = Math.min(toMm, at + stepMm);
    const other = pickAt(next);
    if (other !== pick) {
      let [low, high] = [at, next];
      while (high - low > CLOSE_MM) {
        const middle = (low + high) / 2;
        if (pickAt(middle) === pick) low = middle;
        else high = middle;
      }
      stretches.push({ from: begin, to: high, pick });
      begin = high;
      pick = other;
    }
    at = next;
  }
  return [...stretches, { from: begin, to: Number.POSITIVE_INFINITY, pick }];
}
