import { grubbsTest } from "../grubbs.ts";
import { groupBy, type StudyCellMean } from "./cell-means.ts";
import { cochranTest } from "./cochran.ts";
import type { PrecisionFinding } from "./precision.ts";

/** Significance of an outlier and of a straggler (ISO 5725-2:1994, 7.3.2). */
const OUTLIER = 0.01;
const STRAGGLER = 0.05;

/** What Cochran's and Grubbs' tests find in the cells of a study. */
export function screenPrecision(cells: readonly StudyCellMean[]): {
  readonly variances: readonly PrecisionFinding[];
  readonly means: readonly PrecisionFinding[];
} {
  return { variances: screenVariances(cells), means: screenMeans(cells) };
}

/** One after the other, each time without those found before, as long as one is found. */
function screenVariances(cells: readonly StudyCellMean[]): readonly PrecisionFinding[] {
  const found: PrecisionFinding[] = [];
  let left = cells.filter(({ count }) => count >= 2);
  while (left.length >= 2) {
    const variances = left.map(({ squares, count }) => ({
      variance: squares / (count - 1),
      degreesOfFreedom: count - 1,
    }));
    const strict = cochranTest(variances, OUTLIER);
    const test = strict.isOutlier ? strict : cochranTest(variances, STRAGGLER);
    const cell = left[test.index];
    if (!test.isOutlier || cell === undefined) break;
    const kind = strict.isOutlier ? "outlier" : "straggler";
    found.push({ kind, subject: cell.subject, measurer: cell.measurer, test });
    left = left.filter((other) => other !== cell);
  }
  return found;
}

function screenMeans(cells: readonly StudyCellMean[]): readonly PrecisionFinding[] {
  return [...groupBy(cells, ({ subject }) => subject).values()].flatMap(
    (own): readonly PrecisionFinding[] => {
      if (own.length < 3) return [];
      const means = own.map(({ meanMm }) => meanMm);
      const strict = grubbsTest(means, OUTLIER);
      const test = strict.isOutlier ? strict : grubbsTest(means, STRAGGLER);
      const cell = own[test.index];
      if (!test.isOutlier || cell === undefined) return [];
      const kind = strict.isOutlier ? "outlier" : "straggler";
      return [{ kind, subject: cell.subject, measurer: cell.measurer, test }];
    },
  );
}
