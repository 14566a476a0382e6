/**
 * Taylor coefficients of √((s/2) / sinh(s/2)) in s², from the first power on: exact fractions, by long
 * division and square root of the series of sinh. They turn the normal distribution into Student's t.
 */
export const NORMAL_SERIES: readonly number[] = [
  -1 / 48,
  1 / 2560,
  -61 / 7741440,
  1261 / 7431782400,
  -79 / 20761804800,
  66643 / 761775532277760,
];
