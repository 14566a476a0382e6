/**
 * Published worked examples of propagating uncertainty, with their exact values where those can be had.
 *
 * Sources
 * - GUM: JCGM 100:2008, with the clause beside each figure; printed figures from memory, those of H.1 as they are also
 *   found in the documentation of two open calculators for uncertainty, read second-hand.
 * - JCGM 101:2008, 9.2 to 9.4: inputs and printed figures from memory. Exact values of the sums of rectangular errors
 *   by the distribution of such a sum (closed form), of 9.4 by integrating the noncentral chi-square distribution with
 *   mpmath 1.3 (18 digits), of its correlated case and of 9.3 by quadrature with NumPy and SciPy 1.17.
 * - ln X of a rectangular X: National Physical Laboratory, report DEM-ES-011 (2006), 9.2, printed figures read
 *   second-hand; exact values derived: the distribution function of ln X is e^y − 0.1.
 * - Everything called recomputed without more: mpmath 1.3, 30 or 40 digits.
 */
import type { InputDistribution, UncertainInput } from "@tapewise/measurement";

/** GUM H.1: the end gauge, in nanometres and kelvins; what is rectangular with its half-width a, a/√3. */
export const endGauge: {
  readonly inputs: readonly UncertainInput[];
  readonly printed: Readonly<Record<string, string>>;
  readonly recomputed: Readonly<Record<string, string>>;
} = {
  inputs: [
    { name: "standard", value: 50000623, uncertainty: 25, degreesOfFreedom: 18 },
    { name: "comparison", value: 215, uncertainty: Math.hypot(5.8, 3.9, 6.7) },
    { name: "temperature", value: -0.1, uncertainty: Math.sqrt(0.2 ** 2 + 0.5 ** 2 / 2) },
    { name: "expansion", value: 11.5e-6, uncertainty: 2e-6 / Math.sqrt(3) },
    { name: "expansion difference", value: 0, uncertainty: 1e-6 / Math.sqrt(3), degreesOfFreedom: 50 },
    { name: "temperature difference", value: 0, uncertainty: 0.05 / Math.sqrt(3), degreesOfFreedom: 2 },
  ],
  printed: { value: "50000838", uncertainty: "32", secondOrder: "34", factor99: "2.92", expanded99: "93" },
  recomputed: {
    value: "50000838",
    uncertainty: "31.663879111008632284",
    expansionDifference: "2.8867873148698993362",
    temperatureDifference: "16.599027060501921183",
    secondOrderOne: "11.726185506009492386",
    secondOrderOther: "1.6666874333333333333",
    secondOrder: "33.806545429522182443",
    degreesOfFreedom: "16.751855737627245634",
    factor99At16: "2.9207816224250999920",
  },
};

/** The degrees of freedom of the comparison, GUM H.1.6, recomputed: printed 25.6 from rounded figures. */
export const COMPARISON_DEGREES = 25.44725077736272;

/** GUM H.2, Table H.2: five sets of volts, milliamperes and radians. */
export const impedance = {
  volts: ["5.007", "4.994", "5.005", "4.990", "4.999"],
  milliamperes: ["19.663", "19.639", "19.640", "19.685", "19.678"],
  radians: ["1.0456", "1.0438", "1.0468", "1.0428", "1.0433"],
  /** Table H.3 and H.4. */
  printed: {
    uncertainties: ["0.0032", "0.0095", "0.00075"],
    correlations: ["-0.36", "0.86", "-0.65"],
    resistance: ["127.732", "0.071"],
    reactance: ["219.847", "0.295"],
    impedance: ["254.260", "0.236"],
  },
  recomputed: {
    correlations: ["-0.355311219817510538", "0.857624210839954338", "-0.645111217689244966"],
    resistance: ["127.732169928102088", "0.0710714073969959396"],
    reactance: ["219.846511912638426", "0.295581677358643738"],
    impedance: ["254.259701948018921", "0.236336130082379503"],
  },
} as const;

/** GUM H.3: a line fitted through eleven points, read off at 30 °C; y₁, y₂ with their correlation. */
export const calibration = {
  intercept: ["-0.171203790131350", "0.00287759783515995"],
  slope: ["0.00218269773988728", "0.000667938773227832"],
  correlation: "-0.930429603093446",
  printed: { value: "-0.1494", uncertainty: "0.0041" },
  recomputed: { value: "-0.149376812732477", uncertainty: "0.00413859575285495" },
} as const;

/** GUM H.5: ten days of five readings, microvolts: standard deviations between days and within one. */
export const days = {
  between: "42.6386105673146",
  within: "84.8869836900805",
  printed: { between: "43", within: "85", ofDayMeans: "57", ofMean: "18" },
  recomputed: { ofDayMeans: "57.0895008833596", ofMean: "18.0532853273611" },
} as const;

/** Type B evaluations of the GUM: a distribution and its standard uncertainty. */
export const typeB: readonly {
  readonly clause: string;
  readonly distribution: InputDistribution;
  readonly printed: string;
  readonly recomputed: string;
}[] = [
  {
    clause: "4.3.7 with 4.4.5: 96 to 104",
    distribution: { shape: "rectangular", lower: 96, upper: 104 },
    printed: "2.3",
    recomputed: "2.3094010767585030580",
  },
  {
    clause: "4.3.8: 16.40 to 16.92 about 16.52, as if rectangular",
    distribution: { shape: "rectangular", lower: 16.4, upper: 16.92 },
    printed: "0.15",
    recomputed: "0.150111069989303",
  },
  {
    clause: "4.4.6: 96 to 104, triangular",
    distribution: { shape: "triangular", lower: 96, upper: 104 },
    printed: "1.6",
    // 4/√6
    recomputed: "1.6329931618554520655",
  },
  {
    clause: "F.2.2.1: a resolution of one",
    distribution: { shape: "rectangular", lower: -0.5, upper: 0.5 },
    printed: "0.29",
    recomputed: "0.28867513459481288225",
  },
  {
    clause: "H.1.3.4: ±0.5 °C, U-shaped",
    distribution: { shape: "arcsine", lower: -0.5, upper: 0.5 },
    printed: "0.35",
    recomputed: "0.35355339059327376220",
  },
];

/** JCGM 101, 9.2: sums of four quantities with mean 0; half-widths of 95 %. */
export const sums = [
  { clause: "9.2.2", shape: "normal", sds: [1, 1, 1, 1], printed: "3.92", exact: "3.9199279690801084710" },
  {
    clause: "9.2.3",
    shape: "rectangular",
    sds: [1, 1, 1, 1],
    printed: "3.88",
    exact: "3.8794067413478207564",
  },
  {
    clause: "9.2.4",
    shape: "rectangular",
    sds: [1, 1, 1, 10],
    printed: "17.0",
    exact: "17.015814099866674926",
  },
] as const;

/** JCGM 101, 9.3: calibration of a mass, in mg and kg/m³; printed in mg. */
export const mass = {
  inputs: [
    { name: "reference", distribution: { shape: "normal", mean: 100000, sd: 0.05 } },
    { name: "added", distribution: { shape: "normal", mean: 1.234, sd: 0.02 } },
    { name: "air", distribution: { shape: "rectangular", lower: 1.1, upper: 1.3 } },
    { name: "weight", distribution: { shape: "rectangular", lower: 7000, upper: 9000 } },
    { name: "standard", distribution: { shape: "rectangular", lower: 7950, upper: 8050 } },
  ],
  printed: {
    firstOrder: { uncertainty: "0.0539", lower: "1.1285", upper: "1.3395" },
    secondOrder: { uncertainty: "0.0750", lower: "1.0870", upper: "1.3810" },
    simulated: { uncertainty: "0.0754", lower: "1.0834", upper: "1.3825" },
    differences: ["0.0451", "0.0430"],
    tolerance: "0.005",
  },
  exact: {
    value: "1.234000000",
    uncertainty: "0.075479739955",
    lower: "1.08443329878",
    upper: "1.38356677929",
  },
} as const;

/**
 * JCGM 101, 9.4: comparison loss x₁² + x₂² with x₂ = 0 and u = 0.005 of both, in 10⁻⁶. The law of propagation is said
 * to fail at x₁ = 0 and 0.010. `short` is the shortest interval of 95 %.
 */
export const comparisonLoss: readonly {
  readonly x1: number;
  readonly correlation: number;
  readonly propagated?: { readonly value: string; readonly uncertainty: string };
  readonly printed?: { readonly value: string; readonly uncertainty: string };
  readonly exact: {
    readonly value: number;
    readonly uncertainty: string;
    readonly tails: readonly [string, string];
    readonly short: readonly [string, string];
  };
}[] = [
  {
    x1: 0,
    correlation: 0,
    propagated: { value: "0", uncertainty: "0" },
    printed: { value: "50", uncertainty: "50" },
    exact: {
      value: 50,
      uncertainty: "50",
      tails: ["1.265890399", "184.4439727"],
      short: ["0", "149.7866137"],
    },
  },
  {
    x1: 0.01,
    correlation: 0,
    propagated: { value: "100", uncertainty: "100" },
    printed: { value: "150", uncertainty: "112" },
    exact: {
      value: 150,
      uncertainty: "111.803398874989485",
      tails: ["8.546844923", "427.1232824"],
      short: ["0", "366.0052897"],
    },
  },
  {
    x1: 0.05,
    correlation: 0,
    propagated: { value: "2500", uncertainty: "500" },
    printed: { value: "2551", uncertainty: "502" },
    exact: {
      value: 2550,
      uncertainty: "502.493781056044513",
      tails: ["1638.47707", "3603.358054"],
      short: ["1593.569686", "3548.569831"],
    },
  },
  {
    x1: 0,
    correlation: 0.9,
    exact: {
      value: 50,
      uncertainty: "67.26812023536854",
      tails: ["0.5609777", "241.2171870"],
      short: ["0", "185.0564611"],
    },
  },
  {
    x1: 0.01,
    correlation: 0.9,
    exact: {
      value: 150,
      uncertainty: "120.5197079319395",
      tails: ["29.0814667", "478.3106789"],
      short: ["12.6515555", "397.4787776"],
    },
  },
  {
    x1: 0.05,
    correlation: 0.9,
    exact: {
      value: 2550,
      uncertainty: "504.50470760935417",
      tails: ["1696.8579817", "3659.7962804"],
      short: ["1624.4185716", "3554.6824505"],
    },
  },
];

/** NPL DEM-ES-011, 9.2: ln X, X rectangular from 0.1 to 1.1. */
export const logarithm = {
  propagated: { value: "-0.511", uncertainty: "0.481" },
  propagatedExactly: { value: "-0.510825623765991", uncertainty: "0.481125224324688" },
  simulated: { value: "-0.665", uncertainty: "0.606", lower: "-1.895", upper: "0.095" },
  exact: {
    value: "-0.664900292915838",
    uncertainty: "0.606226697429299",
    // ln 0.15 and ln 1.1; with equal tails ln 0.125 and ln 1.075.
    short: ["-1.89711998488588", "0.0953101798043249"],
    tails: ["-2.07944154167984", "0.0723206615796262"],
  },
} as const;
