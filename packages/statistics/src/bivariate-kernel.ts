import { TWENTY_POINTS } from "./gauss-legendre-data.ts";
import { upperTail } from "./normal-kernel.ts";

const INVERSE_TWO_PI = 0.15915494309189535;
const ROOT_TWO_PI = 2.5066282746310002;

/** Up to this |ρ| the correction is integrated from independence, beyond it from full dependence. */
export const STRONG_CORRELATION = 0.925;

/** So many standard deviations out the density is zero in doubles. */
const BEYOND = 40;

function isBeyond(z: number): boolean {
  return Math.abs(z) > BEYOND;
}

/**
 * Plackett's integral: P(X ≤ h, Y ≤ k) at correlation ρ less the same at correlation zero, for |ρ| up to
 * {@link STRONG_CORRELATION}. With ρ = sin θ it is ∫ exp(−(h² − 2hk sin θ + k²) / (2 cos² θ)) dθ / 2π.
 */
export function fromIndependence(h: number, k: number, rho: number): number {
  if (isBeyond(h) || isBeyond(k)) return 0;
  const half = Math.asin(rho) / 2;
  const product = h * k;
  const squares = (h * h + k * k) / 2;
  let sum = 0;
  for (let i = 0; i < TWENTY_POINTS.length; i += 1) {
    const [node, weight] = TWENTY_POINTS[i] as readonly [number, number];
    const below = Math.sin(half * (1 - node));
    const above = Math.sin(half * (1 + node));
    sum +=
      weight *
      (Math.exp((below * product - squares) / (1 - below * below)) +
        Math.exp((above * product - squares) / (1 - above * above)));
  }
  return INVERSE_TWO_PI * half * sum;
}

/**
 * P(X ≤ h, Y ≤ k) at correlation one less the same at correlation ρ, for ρ from
 * {@link STRONG_CORRELATION} to 1; never below zero.
 *
 * With x = √(1 − ρ²) it is ∫ exp(−b²/2x²) g(x) dx / 2π from 0, where b = h − k and
 * g(x) = exp(−hk / (1 + √(1 − x²))) / √(1 − x²). The first factor rises too steeply from zero for
 * quadrature when h and k are close, so the Taylor polynomial of g is integrated in closed form and only
 * the remainder, of order x⁶, by quadrature. Z. Drezner & G. O. Wesolowsky (1990), J. Statist. Comput.
 * Simul. 35, 101–107; A. Genz (2004), Statistics and Computing 14, 251–260.
 */
export function toFullDependence(h: number, k: number, rho: number): number {
  const b = Math.abs(h - k);
  const reach = Math.sqrt((1 - rho) * (1 + rho));
  if (isBeyond(h) || isBeyond(k) || reach === 0 || b > BEYOND * reach) return 0;
  const product = h * k;
  const second = (4 - product) / 8;
  const fourth = (second * (12 - product)) / 16;

  // ∫ exp(−b²/2x²) xⁿ dx from 0 to reach, for n = 0, 2, 4, each from the one before by parts.
  const edge = Math.exp((-b * b) / (2 * reach * reach));
  const moment0 = reach * edge - ROOT_TWO_PI * b * upperTail(b / reach);
  const moment2 = (reach ** 3 * edge - b * b * moment0) / 3;
  const moment4 = (reach ** 5 * edge - b * b * moment2) / 5;
  let sum = Math.exp(-product / 2) * (moment0 + second * moment2 + fourth * moment4);

  const half = reach / 2;
  for (const [node, weight] of TWENTY_POINTS) {
    for (const x of [half * (1 - node), half * (1 + node)]) {
      const square = x * x;
      const cosine = Math.sqrt(1 - square);
      const exact = Math.exp((-product * square) / (2 * (1 + cosine) ** 2)) / cosine;
      const remainder = exact - (1 + square * (second + square * fourth));
      sum += half * weight * Math.exp(-(b * b) / (2 * square) - product / 2) * remainder;
    }
  }
  return INVERSE_TWO_PI * sum;
}
