import type { SizeRanges } from "@tapewise/charts";
import type { Beliefs } from "./belief.ts";
import { holdAgainst } from "./hold-against.ts";
import { jointProbability } from "./joint-probability.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";

import type { DimensionFit, SizeFit } from "./recommendation.ts";

/** What can be judged: a size of a pack, or of a hip belt. */
export interface Judgeable {
  readonly name: string;
  readonly ranges: SizeRanges;
  readonly capacityLitres?: number;
}

/** Sizes that could be judged, in the chart's order, and those that state nothing of the main dimension. */
export interface JudgedSizes {
  readonly fits: readonly SizeFit[];
  readonly unjudged: readonly string[];
}

/**
 * How every size fits. A size that says nothing of the main dimension cannot be compared and stays
 * unjudged; one that says nothing of another dimension sets no bound there, and the reasons say so where
 * it is picked.
 */
export function judgeSizes(
  sizes: readonly Judgeable[],
  judged: readonly JudgedDimension[],
  beliefs: Beliefs,
): JudgedSizes {
  const fits: SizeFit[] = [];
  const unjudged: string[] = [];
  const main = judged[0];
  for (const size of sizes) {
    if (main === undefined || size.ranges[main.charted] === undefined) {
      unjudged.push(size.name);
      continue;
    }
    fits.push(judgeSize(size, judged, beliefs));
  }
  return { fits, unjudged };
}

function judgeSize(size: Judgeable, judged: readonly JudgedDimension[], beliefs: Beliefs): SizeFit {
  const stated = judged.flatMap(({ charted, belief }) => {
    const range = size.ranges[charted];
    return range === undefined ? [] : [{ charted, belief, range }];
  });
  const dimensions = stated.map(({ charted, belief, range }): DimensionFit => {
    const fit = holdAgainst(belief, range.interval);
    return {
      dimension: charted,
      range,
      probability: fit.inside,
      probabilityBelow: fit.below,
      probabilityAbove: fit.above,
      expectedMisfitMm: fit.expectedMisfitMm,
    };
  });
  const sides = stated.map(({ belief, range }) => ({ length: belief, interval: range.interval }));
  const correlation = (i: number, j: number) => {
    const first = stated[i];
    const second = stated[j];
    return first === undefined || second === undefined
      ? 0
      : beliefs.correlation(first.belief.dimension, second.belief.dimension);
  };
  return {
    size: size.name,
    probability: jointProbability(sides, correlation),
    expectedMisfitMm: dimensions.reduce((sum, one) => sum + one.expectedMisfitMm, 0),
    dimensions,
    ...(size.capacityLitres === undefined ? {} : { capacityLitres: size.capacityLitres }),
  };
}
