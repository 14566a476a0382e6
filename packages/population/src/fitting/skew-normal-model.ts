import { normalCdf } from "@tapewise/statistics";
import { skewNormalDistribution } from "../univariate/skew-normal.ts";
import type { FamilyModel } from "./family-model.ts";
import { logNormalDensity } from "./normal-models.ts";

/** The greatest skewness of the family: ((4 − π)/2) (2/π)^1.5 / (1 − 2/π)^1.5. */
const MOST_SKEW = 0.9952717464311565;
const HALF_FOUR_MINUS_PI = (4 - Math.PI) / 2;
/** From this shape on the curve can hardly be told from a half-normal one. */
const BOUNDARY_SHAPE = 50;

/**
 * Fitted in the centred parameters of Azzalini (mean, standard deviation, skewness): in the direct ones the
 * information is singular where the shape is 0 (A. Azzalini & A. Capitanio, 2014, The Skew-Normal and Related
 * Families, 3.1.4).
 */
export const skewNormalModel: FamilyModel = {
  names: ["location", "scale", "shape"],
  starts: ({ mean, sd, skewness }) => {
    const start = Math.atanh(Math.min(Math.max(skewness / MOST_SKEW, -0.95), 0.95));
    return [start, 0.05, -0.05].map((skew) => [mean, Math.log(sd), skew]);
  },
  freeScales: ({ sd }) => [sd, 1, 1],
  scales: ([, scale = 1, shape = 0]) => [scale, scale, 1 + Math.abs(shape)],
  natural: ([mean = 0, logSd = 0, skew = 0]) => {
    const skewness = MOST_SKEW * Math.tanh(skew);
    const root = Math.cbrt(skewness / HALF_FOUR_MINUS_PI);
    // Skewness = ((4 − π)/2) r³ where r = δ√(2/π) / √(1 − 2δ²/π).
    const delta = root / Math.sqrt((2 / Math.PI) * (1 + root * root));
    const centre = delta * Math.sqrt(2 / Math.PI);
    const scale = Math.exp(logSd) / Math.sqrt(1 - centre * centre);
    const shape = delta / Math.sqrt(Math.max((1 - delta) * (1 + delta), 1e-12));
    return [mean - scale * centre, scale, shape];
  },
  logDensity:
    ([location = 0, scale = 1, shape = 0]) =>
    (x) =>
      scale > 0
        ? Math.LN2 + logNormalDensity(x, location, scale) + logNormalCdf((shape * (x - location)) / scale)
        : Number.NEGATIVE_INFINITY,
  distribution: ([location = 0, scale = 1, shape = 0]) => skewNormalDistribution({ location, scale, shape }),
  isAtBoundary: ([, , shape = 0]) => Math.abs(shape) > BOUNDARY_SHAPE,
};

/** ln Φ(z), also where Φ(z) is too small for a double (leading terms of the tail, DLMF 7.12.1). */
function logNormalCdf(z: number): number {
  if (z > -35) return Math.log(normalCdf(z));
  return -(z * z) / 2 - Math.log(-z * Math.sqrt(2 * Math.PI)) - 1 / (z * z);
}
