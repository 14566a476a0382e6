import { mixtureDistribution } from "../univariate/mixture.ts";
import { normalDistribution } from "../univariate/normal.ts";
import { weightedMoments } from "../univariate/weighted-moments.ts";
import type { FamilyModel, FitSample } from "./family-model.ts";
import { logNormalDensity } from "./normal-models.ts";

/**
 * The least standard deviation of a part, as a share of that of the whole. Without it the likelihood has no
 * maximum: a part that shrinks to one value lets it rise without end. Assumption.
 */
const LEAST_SHARE = 0.05;
const ROUNDS = 60;

/** A mixture of two normal distributions, such as women and men: the first part has the smaller mean. */
export const mixtureModel: FamilyModel = {
  names: ["share1", "mean1", "sd1", "mean2", "sd2"],
  starts: (sample) => {
    const { values, mean, sd } = sample;
    const sorted = [...values].sort((a, b) => a - b);
    const cuts = [0.3, 0.5, 0.7].map((share) => sorted[Math.floor(share * sorted.length)] ?? mean);
    // Side by side, and one inside the other.
    const isFirst = [
      ...cuts.map((cut) => (value: number) => value < cut),
      (value: number) => Math.abs(value - mean) < sd / 2,
    ];
    return isFirst.map((test) => expectMaximise(sample, test));
  },
  freeScales: ({ sd }) => [1, sd, 1, sd, 1],
  scales: ([, , sd1 = 1, , sd2 = 1]) => [0.1, sd1, sd1, sd2, sd2],
  natural: ([logit = 0, mean1 = 0, log1 = 0, mean2 = 0, log2 = 0], { sd }) => [
    1 / (1 + Math.exp(-logit)),
    mean1,
    LEAST_SHARE * sd + Math.exp(log1),
    mean2,
    LEAST_SHARE * sd + Math.exp(log2),
  ],
  logDensity:
    ([share = 0.5, mean1 = 0, sd1 = 1, mean2 = 0, sd2 = 1]) =>
    (x) => {
      if (!(share > 0 && share < 1 && sd1 > 0 && sd2 > 0)) return Number.NEGATIVE_INFINITY;
      const a = Math.log(share) + logNormalDensity(x, mean1, sd1);
      const b = Math.log1p(-share) + logNormalDensity(x, mean2, sd2);
      return Math.max(a, b) + Math.log1p(Math.exp(-Math.abs(a - b)));
    },
  distribution: ([share = 0.5, mean1 = 0, sd1 = 1, mean2 = 0, sd2 = 1]) =>
    mixtureDistribution([
      { weight: share, distribution: normalDistribution({ mean: mean1, sd: sd1 }) },
      { weight: 1 - share, distribution: normalDistribution({ mean: mean2, sd: sd2 }) },
    ]),
  inOrder: ([share = 0.5, mean1 = 0, sd1 = 1, mean2 = 0, sd2 = 1]) =>
    mean1 <= mean2 ? [share, mean1, sd1, mean2, sd2] : [1 - share, mean2, sd2, mean1, sd1],
  isAtBoundary: ([share = 0.5, , sd1 = 1, , sd2 = 1], { sd }) =>
    Math.min(share, 1 - share) < 0.005 || Math.min(sd1, sd2) < 1.02 * LEAST_SHARE * sd,
};

/** Some rounds of the EM algorithm from a first guess of who belongs to the first part. */
function expectMaximise(sample: FitSample, isFirst: (value: number) => boolean): readonly number[] {
  const { values, weights, sd } = sample;
  const floor = LEAST_SHARE * sd;
  let first: readonly number[] = values.map((value) => (isFirst(value) ? 1 : 0.02));
  let part = { share: 0.5, mean1: 0, sd1: sd, mean2: 0, sd2: sd };
  for (let round = 0; round < ROUNDS; round += 1) {
    const one = weightedMoments(
      values,
      weights.map((weight, i) => weight * (first[i] ?? 0)),
    );
    const two = weightedMoments(
      values,
      weights.map((weight, i) => weight * (1 - (first[i] ?? 0) + 1e-12)),
    );
    part = {
      share: Math.min(Math.max(one.total / (one.total + two.total), 1e-4), 1 - 1e-4),
      mean1: one.mean,
      sd1: Math.max(Math.sqrt(one.variance), 1.1 * floor),
      mean2: two.mean,
      sd2: Math.max(Math.sqrt(two.variance), 1.1 * floor),
    };
    const { mean1, sd1, mean2, sd2 } = part;
    const odds = Math.log(part.share) - Math.log1p(-part.share);
    first = values.map((value) => {
      const log = odds + logNormalDensity(value, mean1, sd1) - logNormalDensity(value, mean2, sd2);
      return 1 / (1 + Math.exp(-log));
    });
  }
  const { mean1, sd1, mean2, sd2 } = part;
  const logit = Math.log(part.share) - Math.log1p(-part.share);
  return [logit, mean1, Math.log(sd1 - floor), mean2, Math.log(sd2 - floor)];
}
