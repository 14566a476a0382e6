import { writeNumber } from "./write-sql.ts";

/** The highest power first. Hart et al. 1968, "Computer Approximations", approximation 5666, as printed in West 2005 (from memory; checked against mpmath). */
const NUMERATOR: readonly number[] = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
];
const DENOMINATOR: readonly number[] = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
];

/** Beyond so many standard deviations less than 10⁻¹⁸ is left, and nothing is written. */
const FARTHEST = 9;

/**
 * P(Z > |z|) for a standard normal Z, as arithmetic of standard SQL: exp(−z²/2) times a quotient of two
 * polynomials. In double precision its error is below 10⁻¹⁵. `NULL` stays `NULL`.
 *
 * Source: J. F. Hart et al. 1968, "Computer Approximations", approximation 5666; printed by G. West 2005, "Better
 * approximations to cumulative normal functions".
 *
 * @param z - a column, or an expression in brackets
 *
 * @example
 * ```ts
 * import { normalTailSql } from "@tapewise/duckdb";
 * normalTailSql("z").startsWith("CASE WHEN ABS(z) < 9E0 THEN EXP(-5E-1 * z * z)"); // => true
 * ```
 */
export function normalTailSql(z: string): string {
  const size = `ABS(${z})`;
  const quotient = `${horner(NUMERATOR, size)} / ${horner(DENOMINATOR, size)}`;
  return within(z, `${gaussian(z)} * ${quotient}`);
}

/** 1/√(2π). */
const DENSITY_AT_0 = 0.3989422804014327;

/** The density of the standard normal distribution. */
export function normalDensitySql(z: string): string {
  return within(z, `${writeNumber(DENSITY_AT_0)} * ${gaussian(z)}`);
}

function gaussian(z: string): string {
  return `EXP(-5E-1 * ${z} * ${z})`;
}

function within(z: string, inside: string): string {
  return `CASE WHEN ABS(${z}) < ${writeNumber(FARTHEST)} THEN ${inside} WHEN ${z} IS NOT NULL THEN 0E0 END`;
}

function horner([first = 0, ...others]: readonly number[], x: string): string {
  return others.reduce((text, term) => `(${text} * ${x} + ${writeNumber(term)})`, writeNumber(first));
}
