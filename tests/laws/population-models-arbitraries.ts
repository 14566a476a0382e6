import { fc } from "@fast-check/vitest";
import {
  type Distribution,
  lognormalDistribution,
  mixtureDistribution,
  type NormalJoint,
  normalDistribution,
  normalJoint,
  skewNormalDistribution,
  truncatedNormal,
  type Variable,
} from "@tapewise/population";

/** A finite number from `min` to `max`. */
export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

const normal = fc
  .record({ mean: between(100, 2000), sd: between(1, 150) })
  .map((parameters) => normalDistribution(parameters));
const lognormal = fc
  .record({ meanLog: between(4, 7), sdLog: between(0.02, 0.6), shift: between(-100, 500) })
  .map((parameters) => lognormalDistribution(parameters));
const skewNormal = fc
  .record({ location: between(100, 1500), scale: between(5, 200), shape: between(-20, 20) })
  .map((parameters) => skewNormalDistribution(parameters));
const truncated = fc
  .record({ mean: between(300, 1500), sd: between(10, 150), low: between(-3, 2), width: between(0.1, 4) })
  .map(({ mean, sd, low, width }) =>
    truncatedNormal({ mean, sd, from: mean + low * sd, to: mean + (low + width) * sd }),
  );
const mixture = fc.tuple(between(0.05, 0.95), normal, fc.oneof(normal, skewNormal)).map(([share, a, b]) =>
  mixtureDistribution([
    { weight: share, distribution: a },
    { weight: 1 - share, distribution: b },
  ]),
);

/** A distribution with a density, of any family. */
export const continuous: fc.Arbitrary<Distribution> = fc.oneof(
  normal,
  lognormal,
  skewNormal,
  truncated,
  mixture,
);

const NAMES: readonly Variable[] = ["stature", "torso-length", "waist-girth", "hip-girth", "mass-kg"];

/** A joint normal model of `size` variables, its covariances L Lᵀ of a random triangle L. */
export function joint(size: number): fc.Arbitrary<NormalJoint> {
  const row = (length: number) => fc.array(between(-1, 1), { minLength: length, maxLength: length });
  return fc
    .record({
      mean: fc.array(between(200, 1800), { minLength: size, maxLength: size }),
      below: fc.tuple(...Array.from({ length: size }, (_, i) => row(i))),
      own: fc.array(between(0.4, 1.5), { minLength: size, maxLength: size }),
      scale: fc.array(between(5, 100), { minLength: size, maxLength: size }),
    })
    .map(({ mean, below, own, scale }) => {
      const lower = own.map((diagonal, i) =>
        own.map((_, j) => (j > i ? 0 : (j === i ? diagonal : (below[i]?.[j] ?? 0)) * (scale[i] ?? 1))),
      );
      const covariance = lower.map((a) =>
        lower.map((b) => a.reduce((sum, x, k) => sum + x * (b[k] ?? 0), 0)),
      );
      const about = { label: "made-up people", source: "drawn at random", caveat: "" };
      return normalJoint({ about, variables: NAMES.slice(0, size), mean, covariance });
    });
}
