import type { Interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { normalCdf, normalPdf, studentTCdf, studentTPdf } from "@tapewise/statistics";
import { probabilityInside } from "./probability-inside.ts";
import type { IntervalFit, UncertainLength } from "./uncertain-length.ts";

/**
 * Holds an uncertain length X = m + s·T against an interval from a to b: P(X < a), P(a ≤ X ≤ b), P(X > b)
 * and the expected distance E[max(0, a − X, X − b)], all in closed form.
 *
 * With z the distance of an end in units of s, E[max(0, z − T)] is z Φ(z) + φ(z) for the normal
 * distribution and z F(z) + f(z) (ν + z²)/(ν − 1) for Student's t (integration by parts). Whether an
 * end belongs to the interval matters only for a length that is known exactly.
 *
 * @throws {@link InvalidArgumentError} for a mean that is not finite, a scale below 0, or degrees of freedom
 * of 1 or less, for which no expected distance exists.
 *
 * @example
 * ```ts
 * import { holdAgainst } from "@tapewise/fit";
 * import { interval } from "@tapewise/intervals";
 * const torso = { meanMm: 480, sdMm: 8, degreesOfFreedom: Infinity };
 * const fit = holdAgainst(torso, interval(430, 480));
 * [fit.inside.toFixed(3), fit.above, fit.expectedMisfitMm.toFixed(3)]; // => ["0.500", 0.5, "3.192"]
 * holdAgainst({ ...torso, sdMm: 0 }, interval(430, 480)).inside; // => 1
 * ```
 */
export function holdAgainst(length: UncertainLength, interval: Interval): IntervalFit {
  requireLength(length);
  const { meanMm, sdMm, degreesOfFreedom } = length;
  const toLower = interval.from - meanMm;
  const toUpper = meanMm - interval.to;
  if (sdMm === 0) return holdKnown(meanMm, interval);
  return {
    below: cdf(toLower / sdMm, degreesOfFreedom),
    inside: probabilityInside(length, interval),
    above: cdf(toUpper / sdMm, degreesOfFreedom),
    expectedMisfitMm: shortfall(toLower, sdMm, degreesOfFreedom) + shortfall(toUpper, sdMm, degreesOfFreedom),
  };
}

function requireLength({ meanMm, sdMm, degreesOfFreedom }: UncertainLength): void {
  if (!Number.isFinite(meanMm)) throw new InvalidArgumentError("meanMm", meanMm, "a finite length");
  if (!(Number.isFinite(sdMm) && sdMm >= 0)) throw new InvalidArgumentError("sdMm", sdMm, "0 or more");
  if (!(degreesOfFreedom > 1)) {
    throw new InvalidArgumentError("degreesOfFreedom", degreesOfFreedom, "above 1");
  }
}

function holdKnown(meanMm: number, interval: Interval): IntervalFit {
  const inside = probabilityInside({ meanMm, sdMm: 0, degreesOfFreedom: Number.POSITIVE_INFINITY }, interval);
  const below = inside === 0 && meanMm <= interval.from ? 1 : 0;
  return {
    below,
    inside,
    above: 1 - inside - below,
    expectedMisfitMm: Math.max(0, interval.from - meanMm, meanMm - interval.to),
  };
}

function cdf(z: number, df: number): number {
  return df === Number.POSITIVE_INFINITY ? normalCdf(z) : studentTCdf(z, df);
}

/** So many scales out, only the distance itself is left of the expectation, and squares still are finite. */
const FAR = 1e100;

/** E[max(0, distance − s·T)] in mm. */
function shortfall(distanceMm: number, sdMm: number, df: number): number {
  const z = distanceMm / sdMm;
  if (Math.abs(z) > FAR) return Math.max(0, distanceMm);
  const partial =
    df === Number.POSITIVE_INFINITY
      ? z * normalCdf(z) + normalPdf(z)
      : z * studentTCdf(z, df) + studentTPdf(z, df) * ((df + z * z) / (df - 1));
  return sdMm * Math.max(0, partial);
}
