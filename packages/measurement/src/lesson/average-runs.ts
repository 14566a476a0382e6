import { type SizeBounds, type SizeRegion, sizeRegions } from "../planning/size-regions.ts";
import { insertSorted, middleOf } from "./sorted-values.ts";

/** How results of many series lie about the length they are held against. All lengths in mm. */
export interface AverageSpread {
  readonly biasMm: number;
  /** Standard deviation over the series. */
  readonly sdMm: number;
  /** Root mean square error. */
  readonly rmseMm: number;
  /** The points below which 5, 25, 50, 75 and 95 of 100 results lie. */
  readonly quantilesMm: readonly [number, number, number, number, number];
  /** Share of series that pick a size which the length does not lie in; only where sizes are given. */
  readonly wrongShare?: number;
  /** All results, sorted, to draw a histogram of. */
  readonly valuesMm: Float64Array;
}

/** What averaging a number of readings does, by mean and by median. */
export interface AveragingResult {
  readonly count: number;
  readonly mean: AverageSpread;
  readonly median: AverageSpread;
}

/** Many series, each with as many readings as the largest count, averaged for each count. */
export function averageRuns(
  fill: (series: Float64Array) => void,
  counts: readonly number[],
  runs: number,
  lengthMm: number,
  sizes?: readonly SizeBounds[],
): readonly AveragingResult[] {
  const longest = Math.max(...counts);
  const series = new Float64Array(longest);
  const sorted = new Float64Array(longest);
  const columns = new Map(
    counts.map((count) => [count, { means: new Float64Array(runs), medians: new Float64Array(runs) }]),
  );
  for (let run = 0; run < runs; run += 1) {
    fill(series);
    // Sums of distances, which keep their digits.
    let sum = 0;
    for (let i = 0; i < longest; i += 1) {
      const reading = series[i] as number;
      sum += reading - lengthMm;
      insertSorted(sorted, i, reading);
      const column = columns.get(i + 1);
      if (column === undefined) continue;
      column.means[run] = lengthMm + sum / (i + 1);
      column.medians[run] = middleOf(sorted, i + 1);
    }
  }
  const regions = sizes === undefined ? undefined : sizeRegions(sizes);
  return [...columns].map(([count, { means, medians }]) => ({
    count,
    mean: spreadOf(means, lengthMm, regions),
    median: spreadOf(medians, lengthMm, regions),
  }));
}

function spreadOf(
  valuesMm: Float64Array,
  lengthMm: number,
  regions: readonly SizeRegion[] | undefined,
): AverageSpread {
  const runs = valuesMm.length;
  let sum = 0;
  let squares = 0;
  for (const value of valuesMm) {
    sum += value - lengthMm;
    squares += (value - lengthMm) ** 2;
  }
  const biasMm = sum / runs;
  let scatter = 0;
  for (const value of valuesMm) scatter += (value - lengthMm - biasMm) ** 2;
  valuesMm.sort();
  const at = (share: number): number => valuesMm[Math.ceil(share * runs) - 1] as number;
  return {
    biasMm,
    sdMm: Math.sqrt(scatter / (runs - 1)),
    rmseMm: Math.sqrt(squares / runs),
    quantilesMm: [at(0.05), at(0.25), at(0.5), at(0.75), at(0.95)],
    ...(regions === undefined ? {} : { wrongShare: wrongShareOf(valuesMm, lengthMm, regions) }),
    valuesMm,
  };
}

function wrongShareOf(valuesMm: Float64Array, lengthMm: number, regions: readonly SizeRegion[]): number {
  let wrong = 0;
  for (const value of valuesMm) {
    const picked = regions.find(({ pickedTo }) => value <= pickedTo);
    if (picked === undefined || lengthMm < picked.from || lengthMm > picked.to) wrong += 1;
  }
  return wrong / valuesMm.length;
}
