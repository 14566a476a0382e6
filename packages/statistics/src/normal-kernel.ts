import {
  CENTRE_DENOMINATOR,
  CENTRE_END,
  CENTRE_NUMERATOR,
  MIDDLE_DENOMINATOR,
  MIDDLE_NUMERATOR,
  TAIL_DENOMINATOR,
  TAIL_NUMERATOR,
  TAIL_START,
} from "./normal-data.ts";
import { polynomial } from "./polynomial.ts";

/** 1 / √(2π). */
export const INVERSE_ROOT_TWO_PI = 0.3989422804014327;

/**
 * exp(−z²/2) with Cody's split: z² is taken as s² + (z − s)(z + s) where s is z cut to sixteenths, so
 * that s² is exact and the rounding of z² is not blown up by the exponential.
 */
export function gaussian(z: number): number {
  if (!(Math.abs(z) < 40)) return 0;
  const s = Math.trunc(z * 16) / 16;
  return Math.exp(-0.5 * s * s) * Math.exp(-0.5 * (z - s) * (z + s));
}

/** P(0 < Z < z) for |z| up to {@link CENTRE_END}, odd in z and accurate relative to itself. */
function centre(z: number): number {
  const square = z * z;
  return (z * polynomial(CENTRE_NUMERATOR, square)) / polynomial(CENTRE_DENOMINATOR, square);
}

/** P(Z > z) for z beyond {@link CENTRE_END}, accurate relative to itself. */
function farTail(z: number): number {
  if (z <= TAIL_START) {
    return (gaussian(z) * polynomial(MIDDLE_NUMERATOR, z)) / polynomial(MIDDLE_DENOMINATOR, z);
  }
  if (z >= 40) return 0;
  const inverse = 1 / (z * z);
  const correction = (inverse * polynomial(TAIL_NUMERATOR, inverse)) / polynomial(TAIL_DENOMINATOR, inverse);
  return (gaussian(z) * (INVERSE_ROOT_TWO_PI - correction)) / z;
}

/** P(Z > z), unchecked: `NaN` must have been refused before. */
export function upperTail(z: number): number {
  if (z > CENTRE_END) return farTail(z);
  if (z < -CENTRE_END) return 1 - farTail(-z);
  return 0.5 - centre(z);
}

/** P(0 < Z < z), odd in z, unchecked. Keeps its relative accuracy as z goes to zero. */
export function fromZero(z: number): number {
  if (z > CENTRE_END) return 0.5 - farTail(z);
  if (z < -CENTRE_END) return farTail(-z) - 0.5;
  return centre(z);
}
