import { integrateFromZero, normalPdf, normalUpperTail } from "@tapewise/statistics";
import { requireNumber } from "../require-argument.ts";

const INVERSE_ROOT_TWO_PI = 0.3989422804014327;

/** Beyond h·x = 9 the integrand is less than 10⁻¹⁷ of its start. */
const REACH = 9;

/**
 * Owen's T function: T(h, a) = ∫ exp(−h²(1 + x²)/2) / (1 + x²) dx / 2π from 0 to a. It is the probability that
 * X > h and 0 < Y < aX for two independent standard normal variables, if a is above 0. Even in `h`, odd in
 * `a`; both may be infinite.
 *
 * Gauss–Legendre quadrature in panels for |a| up to 1, and beyond it the reflection
 * T(h, a) = (Q(h) + Q(ah)) / 2 − Q(h) Q(ah) − T(ah, 1/a), where Q is the upper tail of the normal
 * distribution (D. B. Owen, 1956, Ann. Math. Statist. 27, 1075–1090). The error is below 10⁻¹⁵, and below
 * 10⁻¹² relative to the result.
 *
 * @throws {@link InvalidArgumentError} when `h` or `a` is `NaN`.
 *
 * @example
 * ```ts
 * import { owensT } from "@tapewise/population";
 * owensT(0, 1); // => 0.125
 * owensT(1, 0.5).toFixed(10); // => "0.0430646911"
 * ```
 */
export function owensT(h: number, a: number): number {
  requireNumber("h", h);
  requireNumber("a", a);
  if (a === 0) return 0;
  const size = ofPositive(Math.abs(h), Math.abs(a));
  return a < 0 ? -size : size;
}

function ofPositive(h: number, a: number): number {
  if (h === Number.POSITIVE_INFINITY) return 0;
  if (h === 0) return Math.atan(a) / (2 * Math.PI);
  if (a === Number.POSITIVE_INFINITY) return normalUpperTail(h) / 2;
  if (a <= 1) return integral(h, a);
  const above = normalUpperTail(h);
  const beyond = normalUpperTail(a * h);
  return above * (0.5 - beyond) + beyond / 2 - integral(a * h, 1 / a);
}

function integral(h: number, a: number): number {
  const scale = normalPdf(h) * INVERSE_ROOT_TWO_PI;
  if (scale === 0) return 0;
  const width = Math.min(a, REACH / h);
  const panels = Math.max(1, Math.ceil(width * h));
  const panel = width / panels;
  let sum = 0;
  for (let i = 0; i < panels; i += 1) {
    const start = i * panel;
    sum += integrateFromZero((u) => {
      const square = (start + u) * (start + u);
      return Math.exp((-h * h * square) / 2) / (1 + square);
    }, panel);
  }
  return scale * sum;
}
