import { betaFraction } from "./beta-kernel.ts";
import { fromZero, gaussian, INVERSE_ROOT_TWO_PI, upperTail } from "./normal-kernel.ts";
import { gammaHalfStep } from "./stirling.ts";
import { NORMAL_SERIES } from "./t-data.ts";

/** From so many degrees of freedom on, and up to this ln(1 + t²/df), the series about the normal is exact to rounding. */
const SERIES_START = 100;
const SERIES_REACH = 0.4;

/** ln(1 + t²/df), also where t²/df is beyond the largest double. */
function logFactor(t: number, df: number): number {
  const ratio = (t / df) * t;
  return ratio < 1e300 ? Math.log1p(ratio) : 2 * Math.log(Math.abs(t)) - Math.log(df);
}

/** The density of Student's t, unchecked. */
export function studentDensity(t: number, df: number): number {
  if (df === Number.POSITIVE_INFINITY) return INVERSE_ROOT_TWO_PI * gaussian(t);
  const height = gammaHalfStep(df / 2) / (Math.sqrt(Math.PI) * Math.sqrt(df));
  return height * Math.exp(-0.5 * (df + 1) * logFactor(t, df));
}

/** P(T > t) for t ≥ 0, accurate relative to itself, unchecked. */
export function studentTail(t: number, df: number): number {
  if (t === Number.POSITIVE_INFINITY) return 0;
  if (isNearlyNormal(t, df)) return aboutNormal(t, df, true);
  // Where the fraction for the tail is slow the tail is large, and its complement loses nothing.
  return isFarOut(t, df) ? tailByFraction(t, df) : 0.5 - middleByFraction(t, df);
}

/** P(T > t) for any t, unchecked. */
export function studentUpperTail(t: number, df: number): number {
  if (df === Number.POSITIVE_INFINITY) return upperTail(t);
  return t < 0 ? 1 - studentTail(-t, df) : studentTail(t, df);
}

/** P(0 < T < t) for t ≥ 0, accurate relative to itself, unchecked. */
export function studentFromZero(t: number, df: number): number {
  if (t === Number.POSITIVE_INFINITY) return 0.5;
  if (isNearlyNormal(t, df)) return aboutNormal(t, df, false);
  return isFarOut(t, df) ? 0.5 - tailByFraction(t, df) : middleByFraction(t, df);
}

function isNearlyNormal(t: number, df: number): boolean {
  return df >= SERIES_START && logFactor(t, df) <= SERIES_REACH;
}

function isFarOut(t: number, df: number): boolean {
  return (t / df) * t > 3 / (df + 2);
}

/** ½ Iₓ(df/2, ½) with x = df / (df + t²). */
function tailByFraction(t: number, df: number): number {
  const [slope, y] = slopeAndShare(t, df);
  return slope === 0 ? 0 : slope * betaFraction(Math.exp(-logFactor(t, df)), y, df / 2, 0.5);
}

/** ½ I_y(½, df/2) with y = t² / (df + t²). */
function middleByFraction(t: number, df: number): number {
  const [slope, y] = slopeAndShare(t, df);
  return slope * betaFraction(y, Math.exp(-logFactor(t, df)), 0.5, df / 2);
}

/** ½ xᵃ √y / B(a, ½) with a = df/2, and y = t² / (df + t²) = 1 − x. */
function slopeAndShare(t: number, df: number): readonly [slope: number, y: number] {
  const a = df / 2;
  const root = t / Math.hypot(Math.sqrt(df), t);
  const slope = (root * Math.exp(-a * logFactor(t, df)) * gammaHalfStep(a)) / (2 * Math.sqrt(Math.PI));
  return [slope, root * root];
}

/**
 * Student's t for many degrees of freedom. With v² = df ln(1 + t²/df) the density of v is the normal
 * density of y = λv, λ² = 1 − 1/(2df), times an even series in v²/df (see {@link NORMAL_SERIES}); each term is
 * a moment of the normal distribution cut at y. The change of variable is that of D. L. Wallace (1959),
 * "Bounds on normal approximations to Student's and the chi-square distributions".
 */
function aboutNormal(t: number, df: number, tail: boolean): number {
  if (df === Number.POSITIVE_INFINITY) return tail ? upperTail(t) : fromZero(t);
  const v = (t / df) * t < 1e-17 ? t : Math.sqrt(df * logFactor(t, df));
  const lambda = Math.sqrt(1 - 0.5 / df);
  const y = lambda * v;
  if (y > 40) return tail ? 0 : 0.5;
  const height = INVERSE_ROOT_TWO_PI * gaussian(y);
  let moment = tail ? upperTail(y) : fromZero(y);
  let edge = tail ? y * height : -y * height;
  let scale = 1;
  let sum = moment;
  for (let k = 0; k < NORMAL_SERIES.length; k += 1) {
    for (let j = 4 * k; j < 4 * k + 4; j += 2) {
      moment = edge + (j + 1) * moment;
      edge *= y * y;
    }
    scale /= (df - 0.5) * (df - 0.5);
    sum += (NORMAL_SERIES[k] as number) * scale * moment;
  }
  return ((gammaHalfStep(df / 2) * Math.sqrt(2 / df)) / lambda) * sum;
}
