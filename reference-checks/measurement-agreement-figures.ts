/**
 * Published figures about reliability and agreement.
 *
 * Sources
 * - Shrout & Fleiss: P. E. Shrout & J. L. Fleiss (1979), Psychological Bulletin 86, 420–428, Tables 2 to 4. Data and
 *   printed figures from memory; exact ones recomputed as fractions; intervals recomputed with R 4.2.2, psych 2.2.9.
 * - PEFR: J. M. Bland & D. G. Altman (1986), Lancet i, 307–310: peak expiratory flow, Wright and mini Wright meter,
 *   l/min. Printed figures from memory; unrounded ones recomputed in exact fractions and mpmath 1.2.1, those of
 *   the regression with R 4.2.2 `lm`. The paper takes 2 standard deviations for the limits and differences about
 *   zero for the repeatability.
 * - Cardiac output: J. M. Bland & D. G. Altman (1999), Statistical Methods in Medical Research 8, 135–160, Table 4,
 *   radionuclide ventriculography and impedance cardiography, l/min. Data and printed variances from memory; the data
 *   reproduce the printed 0.1072 and 0.1379. Unrounded figures recomputed with R 4.2.2 (`var`, `lm`, `qt`, `qchisq`).
 * - Noncentral t quantiles recomputed with mpmath 1.2.1 by quadrature of the definition (30 digits). R's qt is off in the
 *   12th digit here.
 */

/** Shrout & Fleiss, Table 2: six targets, four judges. */
export const shroutFleiss = {
  table: [
    [9, 2, 5, 8],
    [6, 1, 3, 2],
    [8, 4, 6, 8],
    [7, 1, 2, 6],
    [10, 5, 6, 9],
    [6, 2, 4, 7],
  ],
  /** Printed in Tables 3 and 4, two decimals. */
  printed: {
    meanSquares: { subjects: "11.24", within: "6.26", measurers: "32.49", residual: "1.02" },
    icc: { "1,1": ".17", "2,1": ".29", "3,1": ".71", "1,k": ".44", "2,k": ".62", "3,k": ".91" },
  },
  /** As fractions. */
  exact: {
    meanSquares: {
      subjects: [1349, 120],
      within: [451, 72],
      measurers: [2339, 72],
      residual: [367, 360],
    },
    icc: {
      "1,1": [448, 2703],
      "2,1": [184, 635],
      "3,1": [920, 1287],
      "1,k": [1792, 4047],
      "2,k": [736, 1187],
      "3,k": [3680, 4047],
    },
  },
  /** R psych: 95 % intervals, F, degrees of freedom, p. */
  intervals: {
    "1,1": ["-0.132932324874751", "0.722560062328121"],
    "2,1": ["0.018786513374712", "0.761084369648953"],
    "3,1": ["0.342464765033925", "0.94585825995536"],
    "1,k": ["-0.884442155238119", "0.912415420340776"],
    "2,k": ["0.0711368153025035", "0.927232040167722"],
    "3,k": ["0.675674713816305", "0.985891678169062"],
  },
  tests: {
    "1,1": { f: "1.794678492239469", df: [5, 18], p: "0.16476880834463961" },
    "2,1": { f: "11.027247956403272", df: [5, 15], p: "0.00013456651648433693" },
    "3,1": { f: "11.027247956403272", df: [5, 15], p: "0.00013456651648433693" },
  },
} as const;

/** Bland & Altman 1986: two readings by each meter of 17 people. */
export const pefr = {
  wright: [
    [494, 490],
    [395, 397],
    [516, 512],
    [434, 401],
    [476, 470],
    [557, 611],
    [413, 415],
    [442, 431],
    [650, 638],
    [433, 429],
    [417, 420],
    [656, 633],
    [267, 275],
    [478, 492],
    [178, 165],
    [423, 372],
    [427, 421],
  ],
  mini: [
    [512, 525],
    [430, 415],
    [520, 508],
    [428, 444],
    [500, 500],
    [600, 625],
    [364, 460],
    [380, 390],
    [658, 642],
    [445, 432],
    [432, 420],
    [626, 605],
    [260, 227],
    [477, 467],
    [259, 268],
    [350, 370],
    [451, 443],
  ],
  /** First readings, Wright less mini Wright. */
  printed: {
    bias: "-2.1",
    differenceSd: "38.8",
    limits: ["-79.7", "75.5"],
    biasError: "9.4",
    biasInterval: ["-22.0", "17.8"],
    limitError: "16.3",
    lowerInterval: ["-114.3", "-45.1"],
    upperInterval: ["40.9", "110.1"],
    repeatability: { wright: "43.2", mini: "56.4" },
  },
  recomputed: {
    bias: "-2.1176470588235294118",
    differenceSd: "38.765129873607376563",
    limits2: ["-79.647906806038282538", "75.412612688391223714"],
    limits196: ["-78.097301611093987475", "73.862007493446928652"],
    biasError: "9.4019250035099885165",
    biasInterval: ["-22.048837696645167523", "17.813543578998108700"],
    lowerInterval: ["-114.16974164608649734", "-45.126071965990067738"],
    upperInterval: ["40.890777848343008915", "109.93444752843943851"],
    /** s √(1/n + 1.96²/(2(n − 1))). */
    limitError1999: "16.395107984714520537",
    /** Noncentral t, 16 degrees of freedom, noncentrality 1.96 √17 and 2 √17: 2.5 % and 97.5 %. */
    noncentral196: ["5.42212516157097971", "12.9808715428051197"],
    noncentral2: ["5.55541028737306742", "13.2207782416095052"],
    slope: {
      value: "0.028687445152549",
      standardError: "0.088206408276547",
      intercept: "-15.067497300038999",
      pValue: "0.74949853364929",
      interval: ["-0.15932006368396", "0.21669495398906"],
      residualSd: "39.896034182838",
    },
    wright: {
      aboutZero2: "43.293797952783844305",
      aboutMean2: "43.448075839070791454",
      aboutZero196: "42.427921993728167419",
      withinSd: "15.306669057866862483",
      icc: "0.98316502007752575882",
    },
  },
} as const;

/** Bland & Altman 1999, Table 4: cardiac output of 12 people by two methods, paired readings. */
export const cardiac = {
  subjects: [
    { first: [7.83, 7.42, 7.89, 7.12, 7.88], second: [6.57, 5.62, 6.9, 6.57, 6.35] },
    { first: [6.16, 7.26, 6.71, 6.54], second: [4.06, 4.29, 4.26, 4.09] },
    { first: [4.75, 5.24, 4.86, 4.78, 6.05, 5.42], second: [4.71, 5.5, 5.08, 5.02, 6.01, 5.67] },
    { first: [4.21, 3.61, 3.72, 3.87, 3.92], second: [4.14, 4.2, 4.61, 4.68, 5.04] },
    { first: [3.13, 2.98, 2.85, 3.17, 3.09, 3.12], second: [3.03, 2.86, 2.77, 2.46, 2.32, 2.43] },
    { first: [5.92, 6.42, 5.92, 6.27], second: [5.9, 5.81, 5.7, 5.76] },
    { first: [7.13, 6.62, 6.58, 6.93], second: [5.09, 4.63, 4.61, 5.09] },
    { first: [4.54, 4.81, 5.11, 5.29, 5.39, 5.57], second: [4.72, 4.61, 4.36, 4.2, 4.36, 4.2] },
    { first: [4.48, 4.92, 3.97], second: [3.17, 3.12, 2.96] },
    { first: [4.22, 4.65, 4.74, 4.44, 4.5], second: [4.35, 4.62, 3.16, 3.53, 3.53] },
    { first: [6.78, 6.07, 6.52, 6.42, 6.41, 5.76], second: [7.2, 6.09, 7, 7.1, 7.4, 6.8] },
    { first: [5.06, 4.72, 4.9, 4.8, 4.9, 5.1], second: [4.5, 4.2, 3.8, 3.8, 4.2, 4.5] },
  ],
  printed: { withinVariances: ["0.1072", "0.1379"] },
  constant: {
    bias: "0.709236111111",
    withinVariances: ["0.107227777778", "0.1378740625"],
    differenceSd: "1.05185060322",
    limits: ["-1.3523910712", "2.77086329342"],
    biasInterval: ["0.1022365012", "1.316235721"],
    lowerInterval: ["-2.727229861", "-0.5774790838"],
    upperInterval: ["1.995951306", "4.145702083"],
  },
  varying: {
    bias: "0.602166666667",
    differenceVariances: ["0.810622130348", "0.170713993056"],
    differenceSd: "0.990624108026",
    limits: ["-1.33945658507", "2.5437899184"],
    biasInterval: ["0.007089507069", "1.197243826"],
    lowerInterval: ["-2.681496307", "-0.5767936254"],
    upperInterval: ["1.781126959", "3.88582964"],
  },
} as const;
