/** A stretch of estimates within which the same size is picked. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly pick: number;
}

const CLOSE_MM = 1e-6;

/**
 * Where along the estimates which size is picked: the picks at points `stepMm` apart, and between two that differ the
 * change by bisection. The first and the last stretch go on without an end.
 */
export function pickStretches(
  pickAt: (meanMm: number) => number,
  fromMm: number,
  toMm: number,
  stepMm: number,
): readonly Stretch[] {
  const stretches: Stretch[] = [];
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
