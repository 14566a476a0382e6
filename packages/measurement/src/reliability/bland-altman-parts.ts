import { compensatedMean, compensatedSum } from "./compensated-sum.ts";
import type { RepeatedPair } from "./interval-estimate.ts";
import type { WeightedMeanSquare } from "./variance-interval.ts";

/** Bias and variance of the difference of two single readings, as repeats show them. */
export interface RepeatedDifference {
  readonly bias: number;
  readonly biasError: number;
  /** Mean squares whose weighted sum is the variance. */
  readonly parts: readonly WeightedMeanSquare[];
  readonly variances: {
    /** Of a single reading in either way. */
    readonly withinVariances?: readonly [first: number | undefined, second: number | undefined];
    /** Of differences between subjects and within them. */
    readonly differenceVariances?: readonly [between: number, within: number];
  };
}

/** Bland & Altman (1999), 5.1 and 5.2: a subject's true value is the same in all readings. */
export function seeConstant(subjects: readonly RepeatedPair[]): RepeatedDifference {
  const n = subjects.length;
  const differences = subjects.map(({ first, second }) => compensatedMean(first) - compensatedMean(second));
  const bias = compensatedMean(differences);
  const between = compensatedSum(differences.map((difference) => (difference - bias) ** 2)) / (n - 1);
  const within = (way: "first" | "second"): WeightedMeanSquare => {
    const lists = subjects.map((subject) => subject[way]);
    const squares = compensatedSum(lists.flatMap(squaresAbout));
    const freedom = lists.reduce((sum, list) => sum + list.length - 1, 0);
    const share = lists.reduce((sum, list) => sum + 1 / list.length, 0) / n;
    return { weight: 1 - share, meanSquare: freedom > 0 ? squares / freedom : 0, degreesOfFreedom: freedom };
  };
  const [first, second] = [within("first"), within("second")];
  const variance = ({ degreesOfFreedom: freedom, meanSquare }: WeightedMeanSquare): number | undefined =>
    freedom > 0 ? meanSquare : undefined;
  return {
    bias,
    biasError: Math.sqrt(between / n),
    parts: [{ weight: 1, meanSquare: between, degreesOfFreedom: n - 1 }, first, second],
    variances: { withinVariances: [variance(first), variance(second)] },
  };
}

/** Bland & Altman (1999), 5.3: readings come in pairs, and the true value may change between these. */
export function seeVarying(subjects: readonly RepeatedPair[]): RepeatedDifference {
  const n = subjects.length;
  const lists = subjects.map(({ first, second }) => first.map((value, i) => value - (second[i] ?? 0)));
  const all = lists.flat();
  const bias = compensatedMean(all);
  const means = lists.map(compensatedMean);
  const between =
    compensatedSum(lists.map((list, i) => list.length * ((means[i] ?? 0) - bias) ** 2)) / (n - 1);
  const freedom = all.length - n;
  const within = compensatedSum(lists.flatMap(squaresAbout)) / freedom;
  const squaredCounts = lists.reduce((sum, list) => sum + list.length ** 2, 0);
  const each = (all.length - squaredCounts / all.length) / (n - 1);
  const variance = Math.max((between - within) / each, 0);
  // Where subjects do not differ beyond chance, all differences are alike and make one mean square.
  const pooled = (between * (n - 1) + within * freedom) / (n - 1 + freedom);
  const parts: readonly WeightedMeanSquare[] =
    variance > 0
      ? [
          { weight: 1 / each, meanSquare: between, degreesOfFreedom: n - 1 },
          { weight: 1 - 1 / each, meanSquare: within, degreesOfFreedom: freedom },
        ]
      : [{ weight: 1, meanSquare: pooled, degreesOfFreedom: n - 1 + freedom }];
  const single = variance > 0 ? within : pooled;
  return {
    bias,
    biasError: Math.sqrt((variance * squaredCounts) / all.length ** 2 + single / all.length),
    parts,
    variances: { differenceVariances: [variance, single] },
  };
}

function squaresAbout(list: readonly number[]): readonly number[] {
  const own = compensatedMean(list);
  return list.map((value) => (value - own) ** 2);
}
