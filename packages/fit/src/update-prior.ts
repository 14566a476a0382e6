import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate, Prior } from "@tapewise/measurement";

/** A joint normal distribution of dimensions. */
export interface Joint {
  readonly dimensions: readonly DimensionId[];
  readonly meanMm: readonly number[];
  readonly covariance: (i: number, j: number) => number;
}

/**
 * The prior after the readings (normal conjugate update, one estimate at a time): the posterior covariance
 * solves Σ⁻¹ = C⁻¹ + diag(1/u²).
 */
export function updatePrior(prior: Prior, estimates: readonly Estimate[]): Joint {
  const { dimensions } = prior;
  let meanMm = prior.meanMm;
  let covariance: readonly (readonly number[])[] = prior.covarianceMm2;
  for (const estimate of estimates) {
    const read = dimensions.indexOf(estimate.dimension);
    if (read < 0) continue;
    const known = estimate.uncertaintyMm ** 2;
    const column = covariance.map((row) => row[read] ?? 0);
    const total = (column[read] ?? 0) + known;
    // What is known exactly learns nothing more, and nothing is learned from what is beyond all bounds.
    if (total === 0 || total === Number.POSITIVE_INFINITY) continue;
    const surprise = estimate.mm - (meanMm[read] ?? 0);
    meanMm = meanMm.map((value, i) => value + ((column[i] ?? 0) / total) * surprise);
    covariance = covariance.map((row, i) =>
      row.map((value, j) => {
        // c − c·v/(v + u²) is c·u²/(v + u²), which keeps its digits where the prior is vague.
        if (i === read) return (column[j] ?? 0) * (known / total);
        if (j === read) return (column[i] ?? 0) * (known / total);
        return value - (column[i] ?? 0) * ((column[j] ?? 0) / total);
      }),
    );
  }
  const last = covariance;
  return { dimensions, meanMm, covariance: (i, j) => last[Math.min(i, j)]?.[Math.max(i, j)] ?? 0 };
}
