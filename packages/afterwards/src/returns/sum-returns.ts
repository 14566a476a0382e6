import type { PickStretch } from "@tapewise/coverage";
import type { Interval } from "@tapewise/intervals";
import type { Distribution } from "@tapewise/population";
import { normalIntervalProbability, normalPdf } from "@tapewise/statistics";
import { type Boxes, fitsOf } from "./fitting.ts";
import type { ReturnShares } from "./returns.ts";

/** What one dimension comes to. */
export interface Along {
  readonly distribution: Distribution;
  readonly boxes: Boxes;
  readonly stretches: readonly PickStretch[];
  readonly uncertaintyMm: number;
}

/** How finely lengths are summed, in parts of the uncertainty: the error of the sum goes with its square. */
const FINENESS = 50;

/**
 * Returns where people choose by ranges moved by `chosenMm` and the packs are off by `trueMm` from what is printed: the
 * share of people in each small step of true lengths, times the chance that their estimate leads to each size.
 */
export function sumReturns(
  { distribution, boxes, stretches, uncertaintyMm }: Along,
  chosenMm: number,
  trueMm: number,
): ReturnShares {
  const ends = boxes.flatMap(([range] = []) => endsOf(range)).map((end) => end + trueMm);
  const lowest = Math.min(distribution.quantile(1e-9), ...ends);
  const highest = Math.max(distribution.quantile(1 - 1e-9), ...ends);
  const cuts = [...new Set([lowest, ...ends, highest])].sort((a, b) => a - b);
  let [exchanged, sentBack] = [0, 0];
  for (const [index, to] of cuts.entries()) {
    const from = cuts[index - 1];
    if (from === undefined) continue;
    const fits = fitsOf(boxes, [(from + to) / 2 - trueMm]);
    if (!fits.includes(false)) continue;
    const isServed = fits.includes(true);
    const panels = Math.max(1, Math.ceil(((to - from) * FINENESS) / uncertaintyMm));
    let before = index === 1 ? 0 : distribution.cumulative(from);
    for (let k = 1; k <= panels; k += 1) {
      const isLast = k === panels && index === cuts.length - 1;
      const after = isLast ? 1 : distribution.cumulative(from + ((to - from) * k) / panels);
      const share = after - before;
      before = after;
      if (share <= 0) continue;
      if (!isServed) {
        sentBack += share;
        continue;
      }
      const estimateMm = from + ((to - from) * (k - 0.5)) / panels - chosenMm;
      for (const { from: low, to: high, pick } of stretches) {
        if (fits[pick] === true) continue;
        exchanged +=
          share *
          normalIntervalProbability((low - estimateMm) / uncertaintyMm, (high - estimateMm) / uncertaintyMm);
      }
    }
  }
  return { kept: Math.max(0, 1 - exchanged - sentBack), exchanged, sentBack };
}

/** Places of a standard normal variable with their weights, which stand for all of it: fine where the sum is smooth. */
export function normalNodes(sd: number): readonly { readonly z: number; readonly weight: number }[] {
  if (sd === 0) return [{ z: 0, weight: 1 }];
  const places = Array.from({ length: 33 }, (_, k) => (k - 16) / 4);
  const total = places.reduce((sum, z) => sum + normalPdf(z), 0);
  return places.map((z) => ({ z, weight: normalPdf(z) / total }));
}

function endsOf(range: Interval | undefined): readonly number[] {
  return range === undefined ? [] : [range.from, range.to].filter(Number.isFinite);
}
