import { lognormalDistribution } from "../univariate/lognormal.ts";
import { normalDistribution } from "../univariate/normal.ts";
import { weightedMoments } from "../univariate/weighted-moments.ts";
import type { FamilyModel } from "./family-model.ts";

const LOG_ROOT_TWO_PI = 0.9189385332046727;

/** ln of the normal density. */
export function logNormalDensity(x: number, mean: number, sd: number): number {
  const z = (x - mean) / sd;
  return -(z * z) / 2 - Math.log(sd) - LOG_ROOT_TWO_PI;
}

export const normalModel: FamilyModel = {
  names: ["mean", "sd"],
  starts: ({ mean, sd }) => [[mean, Math.log(sd)]],
  freeScales: ({ sd }) => [sd, 1],
  scales: ([, sd = 1]) => [sd, sd],
  natural: ([mean = 0, logSd = 0]) => [mean, Math.exp(logSd)],
  logDensity:
    ([mean = 0, sd = 1]) =>
    (x) =>
      sd > 0 ? logNormalDensity(x, mean, sd) : Number.NEGATIVE_INFINITY,
  distribution: ([mean = 0, sd = 1]) => normalDistribution({ mean, sd }),
  isAtBoundary: () => false,
};

export const lognormalModel: FamilyModel = {
  ...normalModel,
  names: ["meanLog", "sdLog"],
  starts: ({ values, weights }) => {
    const { mean, variance } = weightedMoments(values.map(Math.log), weights);
    return [[mean, Math.log(variance) / 2]];
  },
  freeScales: ({ mean, sd }) => [sd / mean, 1],
  logDensity: ([meanLog = 0, sdLog = 1]) => {
    const inner = normalModel.logDensity([meanLog, sdLog]);
    return (x) => inner(Math.log(x)) - Math.log(x);
  },
  distribution: ([meanLog = 0, sdLog = 1]) => lognormalDistribution({ meanLog, sdLog }),
};
