import { InvalidArgumentError } from "@tapewise/outcome";
import { fQuantile, fUpperTail } from "@tapewise/statistics";
import { requireShare } from "../require-number.ts";

/** A sample variance with its degrees of freedom. */
export interface SampleVariance {
  readonly variance: number;
  readonly degreesOfFreedom: number;
}

/** What the test says of the variance that is largest for its degrees of freedom. */
export interface CochranResult {
  /** Its position, from 0. */
  readonly index: number;
  /** Its share of the pooled sum of squares: ν·s² / Σν·s²; with equal degrees of freedom s²/Σs². */
  readonly statistic: number;
  readonly critical: number;
  /** Bonferroni's bound on the chance of one as large where all errors are alike, 1 at most. */
  readonly pValue: number;
  readonly isOutlier: boolean;
}

/**
 * Critical value of Cochran's test for one outlying variance: 1 / (1 + (νtotal/ν − 1) / F), with F the upper α/L
 * point of the F distribution with ν and νtotal − ν degrees of freedom, for L variances. With equal degrees of freedom
 * it is the value of ISO 5725-2:1994, Table 4 (W. G. Cochran, 1941, Annals of Eugenics 11, 47–52); for unequal ones,
 * R. U. E. 't Lam, 2010, Analytica Chimica Acta 659, 68–84. Bonferroni's bound: exact wherever two variances cannot
 * both be beyond it (a critical value of ½ or more), and hardly conservative elsewhere.
 *
 * @param count - number of variances, 2 or more
 * @param degreesOfFreedom - of the one that is tested
 * @param totalDegreesOfFreedom - of all together
 * @throws {@link InvalidArgumentError} when a number is out of range.
 *
 * @example
 * ```ts
 * import { cochranCriticalValue } from "@tapewise/measurement";
 * // Five laboratories with two readings each.
 * cochranCriticalValue(5, 1, 5, 0.05).toFixed(3); // => "0.841"
 * ```
 */
export function cochranCriticalValue(
  count: number,
  degreesOfFreedom: number,
  totalDegreesOfFreedom: number,
  significance: number,
): number {
  if (!(Number.isSafeInteger(count) && count >= 2)) {
    throw new InvalidArgumentError("count", count, "a whole number, 2 or more");
  }
  requireShare("significance", significance);
  const others = totalDegreesOfFreedom - degreesOfFreedom;
  if (!(degreesOfFreedom > 0))
    throw new InvalidArgumentError("degreesOfFreedom", degreesOfFreedom, "above 0");
  if (!(others > 0)) {
    throw new InvalidArgumentError("totalDegreesOfFreedom", totalDegreesOfFreedom, "above degreesOfFreedom");
  }
  const f = fQuantile(1 - significance / count, degreesOfFreedom, others);
  return 1 / (1 + others / degreesOfFreedom / f);
}

/**
 * Cochran's test on the variance that is the largest for its degrees of freedom.
 *
 * @throws {@link InvalidArgumentError} for fewer than two variances, a negative one, degrees of freedom that are
 * not above 0, or an α outside (0, 1).
 *
 * @example
 * ```ts
 * import { cochranTest } from "@tapewise/measurement";
 * const alike = [4, 5, 3, 6].map((variance) => ({ variance, degreesOfFreedom: 2 }));
 * cochranTest(alike, 0.05).isOutlier; // => false
 * cochranTest([...alike, { variance: 90, degreesOfFreedom: 2 }], 0.05).index; // => 4
 * ```
 */
export function cochranTest(variances: readonly SampleVariance[], significance: number): CochranResult {
  const total = variances.reduce((sum, { degreesOfFreedom }) => sum + degreesOfFreedom, 0);
  const squares = variances.reduce(
    (sum, { variance, degreesOfFreedom }) => sum + variance * degreesOfFreedom,
    0,
  );
  if (!variances.every(({ variance }) => variance >= 0 && variance < Number.POSITIVE_INFINITY)) {
    throw new InvalidArgumentError("variances", squares, "variances of 0 or more");
  }
  let best: CochranResult | undefined;
  for (const [index, { variance, degreesOfFreedom: df }] of variances.entries()) {
    const critical = cochranCriticalValue(variances.length, df, total, significance);
    // Variances that are all 0 have no outlier; their statistic would be 0/0.
    const statistic = squares === 0 ? 0 : (variance * df) / squares;
    const f = ((total - df) * statistic) / (df * (1 - statistic));
    const tail = statistic >= 1 ? 0 : fUpperTail(f, df, total - df);
    const pValue = Math.min(1, variances.length * tail);
    if (
      best === undefined ||
      pValue < best.pValue ||
      (pValue === best.pValue && statistic > best.statistic)
    ) {
      best = { index, statistic, critical, pValue, isOutlier: statistic > critical };
    }
  }
  if (best === undefined) throw new InvalidArgumentError("variances", variances, "two variances or more");
  return best;
}
