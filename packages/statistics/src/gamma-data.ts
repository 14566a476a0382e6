// biome-ignore-all lint/correctness/noPrecisionLoss: the digits stand as they were computed.
/**
 * Series behind the gamma function. NIST Digital Library of Mathematical Functions (DLMF), release 1.2:
 * ζ(k) − 1 for the Taylor series of ln Γ about 2 (5.7.3) and B₂ₖ / (2k(2k − 1)) for Stirling's series
 * (5.11.1). The first computed with mpmath 1.2.1 to 40 digits, the second exact fractions.
 */

/** ζ(k) − 1 for k = 2, 3, … */
export const ZETA_MINUS_ONE: readonly number[] = [
  0.6449340668482264365, 0.2020569031595942854, 0.08232323371113819152, 0.03692775514336992633,
  0.01734306198444913971, 0.00834927738192282684, 0.004077356197944339379, 0.002008392826082214418,
  0.0009945751278180853371, 0.0004941886041194645587, 0.0002460865533080482986, 0.0001227133475784891468,
  0.00006124813505870482926, 0.00003058823630702049355, 0.00001528225940865187173, 7.637197637899762274e-6,
  3.817293264999839856e-6, 1.908212716553938926e-6, 9.539620338727961132e-7, 4.769329867878064631e-7,
  2.3845050272773299e-7, 1.192199259653110731e-7, 5.960818905125947961e-8, 2.980350351465228019e-8,
  1.490155482836504123e-8, 7.450711789835429492e-9, 3.725334024788457055e-9, 1.862659723513049006e-9,
  9.313274324196681829e-10,
];

/** 1 − γ, with Euler's constant γ. */
export const ONE_MINUS_EULER = 0.4227843350984671394;

/** B₂ₖ / (2k(2k − 1)) for k = 8 down to 1, the order in which Horner's rule takes it. */
export const STIRLING: readonly number[] = [
  -3617 / 122400,
  1 / 156,
  -691 / 360360,
  1 / 1188,
  -1 / 1680,
  1 / 1260,
  -1 / 360,
  1 / 12,
];

/** −(1 − 4⁻ᵏ) B₂ₖ / (k(2k − 1)) for k = 8 down to 1: the difference of two Stirling series half a step apart. */
export const HALF_STEP: readonly number[] = [
  929569 / 15728640,
  -5461 / 425984,
  691 / 180224,
  -31 / 18432,
  17 / 14336,
  -1 / 640,
  1 / 192,
  -1 / 8,
];
