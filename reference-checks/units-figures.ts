/**
 * Published figures about units of length, inch fractions and rounding.
 *
 * Sources
 * - Units: NIST SP 811 (2008), Appendix B.8 and B.9; the international yard and pound agreement of 1959
 *   (1 yd = 0.9144 m exactly). Exact by definition; digits from memory.
 * - US survey foot: 1200/3937 m, withdrawn after 2022 (US Federal Register 85 FR 62698, 2020).
 * - Rounding: ISO 80000-1:2009, Annex B, rules A and B (from memory); NIST SP 811, B.7.1 (from memory);
 *   ASTM E29 (its examples 45.75, 45.45 and 45.45001 as quoted in print).
 * - Every result below was recomputed with Python 3.11, fractions.Fraction.
 *
 * Figures are text, so that none passes through a double on its way here.
 */

/** Unit and its exact length in metres. */
export const factors = [
  ["mm", "0.001"],
  ["cm", "0.01"],
  ["m", "1"],
  ["in", "0.0254"],
  ["ft", "0.3048"],
] as const;

/** The US survey foot in millimetres, 1200000/3937, to 16 digits: what our foot is not. */
export const surveyFootMm = "304.8006096012192";

/** Inch fraction, the same with decimals, and its exact length in millimetres. */
export const inchFractions: readonly (readonly [fraction: string, decimal: string, mm: string])[] = [
  ["1/2", "0.5", "12.7"],
  ["1/4", "0.25", "6.35"],
  ["1/8", "0.125", "3.175"],
  ["3/8", "0.375", "9.525"],
  ["7/8", "0.875", "22.225"],
  ["1/16", "0.0625", "1.5875"],
  ["5/16", "0.3125", "7.9375"],
  ["7/16", "0.4375", "11.1125"],
  ["11/16", "0.6875", "17.4625"],
  ["13/16", "0.8125", "20.6375"],
  ["1/32", "0.03125", "0.79375"],
  ["3/32", "0.09375", "2.38125"],
  ["7/32", "0.21875", "5.55625"],
  ["9/32", "0.28125", "7.14375"],
  ["17/32", "0.53125", "13.49375"],
  ["31/32", "0.96875", "24.60625"],
  ["3/64", "0.046875", "1.190625"],
  ["5/64", "0.078125", "1.984375"],
  ["9/64", "0.140625", "3.571875"],
  ["15/64", "0.234375", "5.953125"],
  ["31/64", "0.484375", "12.303125"],
  ["33/64", "0.515625", "13.096875"],
];

/** A length, a denominator, the nearest such fraction of an inch (ties to even), and that in millimetres. */
export const nearestFractions: readonly (readonly [
  mm: string,
  denominator: 8 | 16,
  inches: string,
  roundedMm: string,
])[] = [
  ["1000", 8, "39 3/8", "1000.125"],
  ["1000", 16, "39 3/8", "1000.125"],
  ["1756.2", 8, "69 1/8", "1755.775"],
  ["1756.2", 16, "69 1/8", "1755.775"],
  ["880", 8, "34 5/8", "879.475"],
  ["880", 16, "34 5/8", "879.475"],
  ["914.4", 8, "36", "914.4"],
  ["914.4", 16, "36", "914.4"],
  ["1019.5", 8, "40 1/8", "1019.175"],
  ["1019.5", 16, "40 1/8", "1019.175"],
  ["3.175", 8, "1/8", "3.175"],
  ["3.175", 16, "1/8", "3.175"],
  ["1.5875", 8, "0", "0"],
  ["1.5875", 16, "1/16", "1.5875"],
  ["0.79375", 8, "0", "0"],
  ["0.79375", 16, "0", "0"],
  ["2.38125", 8, "1/8", "3.175"],
  ["2.38125", 16, "1/8", "3.175"],
  ["640.5", 8, "25 1/4", "641.35"],
  ["640.5", 16, "25 3/16", "639.7625"],
  ["25.4", 8, "1", "25.4"],
  ["25.4", 16, "1", "25.4"],
  ["12.7", 8, "1/2", "12.7"],
  ["12.7", 16, "1/2", "12.7"],
  ["100", 8, "3 7/8", "98.425"],
  ["100", 16, "3 15/16", "100.0125"],
  ["0.1", 8, "0", "0"],
  ["0.1", 16, "0", "0"],
  ["1803.4", 8, "71", "1803.4"],
  ["1803.4", 16, "71", "1803.4"],
  ["411.5", 8, "16 1/4", "412.75"],
  ["411.5", 16, "16 3/16", "411.1625"],
];

/** What people write and its exact length in millimetres. */
export const writtenLengths: readonly (readonly [text: string, mm: string])[] = [
  ["5 ft 9 in", "1752.6"],
  ["5'9 1/2\"", "1765.3"],
  ["5 ft 11 3/4 in", "1822.45"],
  ["0 ft 0 1/64 in", "0.396875"],
  ["34 1/2 in", "876.3"],
  ["36 ft", "10972.8"],
];

/** Millimetres in inches to 29 digits. */
export const millimetresInInches: readonly (readonly [mm: string, inches: string])[] = [
  ["1000", "39.370078740157480314960629921"],
  ["1756.2", "69.141732283464566929133858268"],
  ["0.1", "0.0039370078740157480314960629921"],
];

/** A number, the step to round to, and the results of ISO 80000-1's rule A and rule B. */
export const roundings: readonly (readonly [
  source: string,
  value: string,
  step: string,
  ruleA: string,
  ruleB: string,
])[] = [
  ["NIST SP 811 B.7.1", "6.9749515", "0.01", "6.97", "6.97"],
  ["NIST SP 811 B.7.1", "6.9749515", "0.1", "7.0", "7.0"],
  ["NIST SP 811 B.7.1", "6.9749515", "0.000001", "6.974952", "6.974952"],
  ["NIST SP 811 B.7.1", "6.9749505", "0.000001", "6.974950", "6.974951"],
  ["ISO 80000-1 Annex B", "12.35", "0.1", "12.4", "12.4"],
  ["ISO 80000-1 Annex B", "12.223", "0.1", "12.2", "12.2"],
  ["ISO 80000-1 Annex B", "12.275", "0.1", "12.3", "12.3"],
  ["ISO 80000-1 Annex B", "1222.3", "10", "1220", "1220"],
  ["ISO 80000-1 Annex B", "1227.5", "10", "1230", "1230"],
  ["ISO 80000-1 Annex B", "1225.0", "10", "1220", "1230"],
  ["ASTM E29", "45.75", "0.1", "45.8", "45.8"],
  ["ASTM E29", "45.45", "0.1", "45.4", "45.5"],
  ["ASTM E29", "45.45001", "0.1", "45.5", "45.5"],
  ["ISO 80000-1 Annex B", "-12.25", "0.1", "-12.2", "-12.3"],
  ["ISO 80000-1 Annex B", "-12.35", "0.1", "-12.4", "-12.4"],
  ["ISO 80000-1 Annex B", "1.5", "1", "2", "2"],
  ["ISO 80000-1 Annex B", "2.5", "1", "2", "3"],
  ["a tie in decimals, not in binary", "2.675", "0.01", "2.68", "2.68"],
  ["a tie in decimals, not in binary", "1.005", "0.01", "1.00", "1.01"],
];

/** Products whose nearest double plain multiplication misses: a number of inches, and millimetres. */
export const binaryPitfalls: readonly (readonly [inches: string, mm: string])[] = [
  ["69.1", "1755.14"],
  ["39.37", "999.998"],
];
