import type { InputDistribution } from "./input-distribution.ts";
import { requireDistribution } from "./require-distribution.ts";

/** What the law of propagation needs of a distribution. */
export interface InputMoments {
  readonly mean: number;
  /** Standard uncertainty: for Student's t its scale, as GUM 4.2.3 has it, and not its standard deviation. */
  readonly uncertainty: number;
  readonly degreesOfFreedom: number;
}

/**
 * Mean, standard uncertainty and degrees of freedom of a distribution, in its own unit: half-width over √3
 * for a rectangle, √6 for a triangle, √2 for an arcsine (GUM 4.3.7, 4.3.9, H.1.3.4), √((1 + β²)/6) of it for
 * a trapezoid whose top is a part β of the whole (GUM 4.3.9), and √((b − a)²/12 + d²/9) for a rectangle with
 * inexact bounds (JCGM 101:2008, 6.4.3.3).
 *
 * @throws {@link InvalidArgumentError} when a figure is not finite, bounds stand the wrong way round, or a
 * spread, a share or the degrees of freedom are out of range.
 *
 * @example
 * ```ts
 * import { describeInput } from "@tapewise/measurement";
 * describeInput({ shape: "rectangular", lower: 427, upper: 433 }).uncertainty.toFixed(6); // => "1.732051"
 * describeInput({ shape: "student-t", mean: 430, scale: 2, degreesOfFreedom: 4 });
 * // => { mean: 430, uncertainty: 2, degreesOfFreedom: 4 }
 * ```
 */
export function describeInput(distribution: InputDistribution): InputMoments {
  requireDistribution("distribution", distribution);
  const known = { degreesOfFreedom: Number.POSITIVE_INFINITY };
  if (distribution.shape === "normal") {
    return { mean: distribution.mean, uncertainty: distribution.sd, ...known };
  }
  if (distribution.shape === "student-t") {
    const { mean, scale, degreesOfFreedom } = distribution;
    return { mean, uncertainty: scale, degreesOfFreedom };
  }
  const half = (distribution.upper - distribution.lower) / 2;
  return { mean: distribution.lower + half, uncertainty: spreadOf(distribution, half), ...known };
}

function spreadOf(
  distribution: Exclude<InputDistribution, { readonly shape: "normal" | "student-t" }>,
  half: number,
): number {
  switch (distribution.shape) {
    case "rectangular":
      return half / Math.sqrt(3);
    case "triangular":
      return half / Math.sqrt(6);
    case "arcsine":
      return half / Math.SQRT2;
    case "trapezoidal":
      return half * Math.sqrt((1 + distribution.topShare ** 2) / 6);
    case "curvilinear-trapezoid":
      return Math.sqrt(half ** 2 / 3 + distribution.inexactness ** 2 / 9);
  }
}
