/**
 * Published and recomputed figures about technical errors of measurement and precision.
 *
 * Sources
 * - Stature: the worked example of S. J. Ulijaszek & D. A. Kerr, 1999, British Journal of Nutrition 82, 165–177: ten
 *   children, four observers, in metres. Data and the printed columns ΣM², (ΣM)²/K and their difference (times 100)
 *   read in the nutriverse/anthrocheckr package; TEM, mean and SD recomputed with mpmath.
 * - Standardisation test: the supervisor's two readings of ten children, SMART Methodology, read in the same package.
 *   TEM of the weights printed in its documentation; everything else recomputed with mpmath.
 * - Peak flow: Wright meter, two readings of seventeen people, J. M. Bland & D. G. Altman, 1986, Lancet i, 307–310;
 *   recomputed with mpmath.
 * - Cochran's critical values: printed, ISO 5725-2:1994, Table 4, from memory; unrounded, recomputed with R 4.2.2 (`qf`).
 * - Incomplete study: invented readings; all figures recomputed with R 4.2.2 (`lm`, `qchisq`, `aggregate`).
 */

/** Statures in metres: a row for each child, a column for each observer. */
export const stature = {
  values: [
    ["0.865", "0.863", "0.863", "0.864"],
    ["1.023", "1.023", "1.027", "1.025"],
    ["0.982", "0.980", "0.989", "0.985"],
    ["0.817", "0.816", "0.812", "0.817"],
    ["0.901", "0.894", "0.900", "0.903"],
    ["0.880", "0.876", "0.881", "0.881"],
    ["0.948", "0.947", "0.947", "0.946"],
    ["0.906", "0.905", "0.907", "0.908"],
    ["0.924", "0.924", "0.926", "0.924"],
    ["0.989", "0.987", "1.002", "0.993"],
  ],
  printed: {
    /** ΣM² − (ΣM)²/K of each child, times 100, in square metres. */
    differences: [
      "0.0003",
      "0.0011",
      "0.0046",
      "0.0017",
      "0.0045",
      "0.0017",
      "0.0002",
      "0.0005",
      "0.0003",
      "0.0133",
    ],
  },
  recomputed: {
    temMetres: "0.0030632227038420391894",
    meanMetres: "0.92375000000000000000",
    percent: "0.33160732923865106245",
    sdMetres: "0.061864098366230689507",
    reliability: "0.99754822976091974045",
  },
} as const;

/** Two readings of ten children: weights in kilograms, heights in centimetres. */
export const standardisation = {
  weights: {
    values: [
      ["15.9", "16.0"],
      ["14.2", "14.3"],
      ["16.7", "16.7"],
      ["14.1", "14.2"],
      ["14.8", "14.6"],
      ["16.2", "16.1"],
      ["10.5", "10.5"],
      ["16.5", "16.4"],
      ["14.1", "14.3"],
      ["13.5", "13.5"],
    ],
    printed: { tem: "0.08062258" },
    recomputed: {
      tem: "0.080622577482985496524",
      percent: "0.55013700090744112265",
      reliability: "0.99798035961046288195",
    },
  },
  heights: {
    values: [
      ["102.0", "102.3"],
      ["94.8", "94.3"],
      ["97.2", "97.2"],
      ["93.1", "93.2"],
      ["99.6", "99.1"],
      ["98.9", "98.3"],
      ["83.5", "83.5"],
      ["98.0", "98.0"],
      ["95.1", "92.9"],
      ["94.7", "94.2"],
    ],
    recomputed: {
      tem: "0.55000000000000000000",
      percent: "0.57594638462746740667",
      sd: "4.9533056479592760093",
      reliability: "0.98767079356328545733",
    },
  },
} as const;

/** Peak flow in litres a minute, two readings each; only the arithmetic is that of lengths. */
export const peakFlow = {
  first: [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427],
  second: [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421],
  recomputed: {
    within: "15.306669057866862483",
    percent: "3.4175646701305051511",
    mean: "447.88235294117647059",
    sd: "116.20013161883808347",
    reliability: "0.98264805569351142710",
  },
} as const;

/** Cochran's critical values for p variances of ν degrees of freedom each. */
export const cochran = [
  { count: 2, df: 1, significance: 0.05, printed: undefined, recomputed: 0.998458666866564 },
  { count: 2, df: 1, significance: 0.01, printed: undefined, recomputed: 0.9999383162408304 },
  { count: 5, df: 1, significance: 0.05, printed: "0.841", recomputed: 0.8412552870530717 },
  { count: 5, df: 1, significance: 0.01, printed: "0.928", recomputed: 0.9278688494721024 },
  { count: 5, df: 2, significance: 0.05, printed: "0.684", recomputed: 0.683772233983162 },
  { count: 5, df: 2, significance: 0.01, printed: "0.788", recomputed: 0.7885257473118871 },
  { count: 10, df: 1, significance: 0.05, printed: "0.602", recomputed: 0.6020095610806492 },
  { count: 10, df: 1, significance: 0.01, printed: "0.718", recomputed: 0.7174886322477523 },
  { count: 10, df: 2, significance: 0.05, printed: "0.445", recomputed: 0.4449526922151884 },
  { count: 10, df: 2, significance: 0.01, printed: "0.536", recomputed: 0.535841116638722 },
  { count: 20, df: 1, significance: 0.05, printed: undefined, recomputed: 0.389428982577176 },
  { count: 40, df: 3, significance: 0.01, printed: undefined, recomputed: 0.1506747484318763 },
] as const;

/** Six variances, the tested one of 3 degrees of freedom among 14. */
export const cochranUnequal = {
  count: 6,
  df: 3,
  total: 14,
  significance: 0.05,
  recomputed: 0.6416106100997765,
} as const;

/** A study with cells read once, twice, three times or never. */
export const incomplete = {
  text: [
    "subject,measurer,repeat,mm",
    ...["s1,A,1,431", "s1,A,2,433", "s1,B,1,436", "s1,C,1,430", "s2,A,1,470", "s2,B,1,478", "s2,B,2,475"],
    ...["s2,B,3,474", "s3,A,1,452", "s3,A,2,450", "s3,C,1,449", "s3,C,2,453", "s4,B,1,489", "s4,C,1,481"],
    ...["s4,C,2,480", "s5,A,1,415", "s5,A,2,418", "s5,B,1,421", "s5,B,2,424", "s5,C,1,417", "s6,B,1,444"],
    "s6,B,2,447",
  ].join("\n"),
  intra: { value: 1.962613525850627, lower: 1.349954680321849, upper: 3.582967237143547, df: 9 },
  perMeasurer: [
    ["A", 1.683250823060382, 3],
    ["B", 2.10158670215308, 4],
    ["C", 2.061552812808838, 2],
  ],
  inter: { value: 3.645229541839352, lower: 2.022269560543599, upper: 22.329453511174918, df: 7 },
  lasting: { squares: 88.24206349206186, df: 2 },
  changing: { squares: 4.771825396826452, df: 5 },
  errorShare: 0.7023809523809524,
  total: { value: 3.799221353437588, lower: 2.28388885891797, upper: 22.35527336098784 },
  precision: {
    repeatability: 1.962613525850627,
    between: 3.161582638805638,
    reproducibility: 3.721217090395164,
  },
  trend: {
    slope: 0.3636363636363606,
    error: 0.8782652573448116,
    pValue: 0.6897232668836843,
    df: 8,
    lower: -1.661646951606925,
    upper: 2.388919678879647,
  },
} as const;
