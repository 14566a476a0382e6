/**
 * Published figures about measurement uncertainty and outliers.
 *
 * Sources
 * - GUM: JCGM 100:2008, Evaluation of measurement data, with the clause beside each figure; JCGM 101:2008, 9.2.2.
 *   Printed figures from memory; the unrounded ones recomputed with mpmath 1.3 (40 digits).
 * - Grubbs' critical values by the formula of F. E. Grubbs (1950, 1969) and NIST/SEMATECH e-Handbook 1.3.5.17.1:
 *   recomputed with mpmath 1.3. Printed: ISO 5725-2:1994, Table 5, upper 5 % and 1 %, which are two-sided and
 *   equal the one-sided 2.5 % and 0.5 % of ASTM E178, Table 1 (Grubbs & Beck 1972); from memory. The printed
 *   values are off the formula by up to 0.0009.
 * - Worked examples: Grubbs 1969 (ASTM E178, example 1), from memory; Tietjen & Moore 1972 as in NIST/SEMATECH
 *   e-Handbook 1.3.5.17.1, read second-hand.
 * - Correlation of rounding errors: no publication; the mean of 1 − 6u + 6u² over N(0, 2σ²), u the part of the
 *   difference beyond whole steps, integrated with mpmath 1.3 (30 digits).
 *
 * Figures are text, so that none passes through a double on its way here.
 */

/** GUM 4.4.3, Table 1: twenty temperatures in degrees Celsius; mean, experimental standard deviation, that of the mean. */
export const typeA = {
  values: [
    "96.90",
    "98.18",
    "98.25",
    "98.61",
    "99.03",
    "99.49",
    "99.56",
    "99.74",
    "99.89",
    "100.07",
    "100.33",
    "100.42",
    "100.68",
    "100.95",
    "101.11",
    "101.20",
    "101.57",
    "101.84",
    "102.36",
    "102.72",
  ],
  printed: { mean: "100.145", sd: "1.489", sdOfMean: "0.333" },
  recomputed: { sd: "1.4888444830595444381", sdOfMean: "0.33291574720466754344" },
} as const;

/**
 * GUM G.4.1: three relative uncertainties in percent. The document prints 19.0 degrees of freedom and t = 2.09; the
 * unrounded value is 18.9987, which cut to a whole number is 18 and not 19.
 */
export const welchSatterthwaite = {
  components: [
    ["0.25", 9],
    ["0.57", 4],
    ["0.82", 14],
  ],
  printed: { combined: "1.03", degreesOfFreedom: "19.0" },
  recomputed: { combined: "1.0294658809304949471", degreesOfFreedom: "18.998742314267953119" },
} as const;

/**
 * GUM H.1, the end gauge, in nanometres: the comparison's own components, then all of them. The document prints
 * 25.6 and 16.7 degrees of freedom, the former from rounded figures.
 */
export const endGauge = {
  comparison: [
    ["5.8", 24],
    ["3.9", 5],
    ["6.7", 8],
  ],
  comparisonPrinted: { combined: "9.7", degreesOfFreedom: "25.6" },
  comparisonRecomputed: { combined: "9.6819419539677059562", degreesOfFreedom: "25.447250777362717705" },
  others: [
    ["25", 18],
    ["2.8867873148698993362", 50],
    ["16.599027060501921183", 2],
  ],
  printed: { combined: "32", degreesOfFreedom: "16.7" },
  recomputed: { combined: "31.663879111008632284", degreesOfFreedom: "16.751855737627245634" },
} as const;

/** GUM 4.3.7, 4.4.5 and F.2.2.1: rectangular distributions. */
export const rectangular = {
  /** Half-width 4 about 100: a/√3, printed 2.3. */
  halfWidthFour: { printed: "2.3", recomputed: "2.3094010767585030580" },
  /** Resolution δx: δx/√12, printed 0.29 δx. Step in mm, its standard uncertainty in mm. */
  resolution: [
    ["1 mm", "0.28867513459481288225"],
    ["1/8 in", "0.91654355233853090116"],
    ["1/16 in", "0.45827177616926545058"],
  ],
} as const;

/** JCGM 101, 9.2.2: the sum of four N(0, 1); printed u = 2.00 and ±3.92. */
export const additive = {
  printed: { u: "2.00", halfWidth: "3.92" },
  recomputed: { halfWidth: "3.9199279690801084710" },
} as const;

/** Two-sided critical values of Grubbs' test at 5 % and at 1 %. */
export const grubbs: readonly {
  readonly n: number;
  readonly five: string;
  readonly one: string;
  readonly printedFive?: string;
  readonly printedOne?: string;
}[] = [
  { n: 3, five: "1.1543048513440384", one: "1.1546847100299753", printedFive: "1.155", printedOne: "1.155" },
  { n: 5, five: "1.7150373123433637", one: "1.7636784794977970", printedFive: "1.715", printedOne: "1.764" },
  { n: 6, five: "1.8871451177839332", one: "1.9728167175443082", printedFive: "1.887", printedOne: "1.973" },
  { n: 8, five: "2.1266450871954653", one: "2.2743651270798925", printedFive: "2.126", printedOne: "2.274" },
  { n: 9, five: "2.2150042233255333", one: "2.3868098750709169", printedFive: "2.215", printedOne: "2.387" },
  { n: 11, five: "2.3547300515655384", one: "2.5641212520012981", printedFive: "2.355", printedOne: "2.564" },
  { n: 12, five: "2.4115595184316524", one: "2.6357330437345000", printedFive: "2.412", printedOne: "2.636" },
  { n: 14, five: "2.5073208525788401", one: "2.7553724049415593", printedFive: "2.507", printedOne: "2.755" },
  { n: 15, five: "2.5483077717433440", one: "2.8061052912205915", printedFive: "2.549", printedOne: "2.806" },
  { n: 17, five: "2.6199636398344378", one: "2.8940137954244261", printedFive: "2.620", printedOne: "2.894" },
  { n: 18, five: "2.6515991201297915", one: "2.9324821543932841", printedFive: "2.651", printedOne: "2.932" },
  { n: 20, five: "2.7082456458057543", one: "3.0008041573404599", printedFive: "2.709", printedOne: "3.001" },
  { n: 25, five: "2.8216812378051956", one: "3.1353276893801689" },
  { n: 40, five: "3.0360973845112138", one: "3.3806834758341687" },
  { n: 50, five: "3.1282473343309718", one: "3.4824617998038169" },
];

/** Samples with the outlier that their authors found. */
export const outliers = [
  {
    name: "breaking strength of copper wire in kg (Grubbs 1969): rejected at 5 %, not at 1 %, one-sided",
    values: ["568", "570", "570", "570", "572", "572", "572", "578", "584", "596"],
    index: 9,
    printed: "2.39",
    recomputed: "2.3901205108399928",
    // One-sided 5 % and 1 % are two-sided 10 % and 2 %.
    oneSided: { five: "2.1760683941942214", one: "2.4097245871541462" },
    isOutlierAtFive: true,
    isOutlierAtOne: false,
  },
  {
    name: "mass spectrometer readings (Tietjen & Moore 1972)",
    values: ["199.31", "199.53", "200.19", "200.82", "201.92", "201.95", "202.18", "245.57"],
    index: 7,
    printed: "2.468765",
    recomputed: "2.4687646112124505",
    oneSided: { five: "2.0316520015499436", one: "2.2208334515104259" },
    isOutlierAtFive: true,
    isOutlierAtOne: true,
  },
] as const;

/** Scatter in steps, and how strongly the rounding errors of two readings go together. */
export const roundingCorrelations = [
  ["0.001", "0.993241724997426925"],
  ["0.01", "0.933497249974269246"],
  ["0.05", "0.691486249871346228"],
  ["0.08", "0.535177999794153964"],
  ["0.1", "0.442972499742336933"],
  ["0.15", "0.254457536008168598"],
  ["0.2", "0.125600541541166871"],
  ["0.25", "0.0515631021341716079"],
  ["0.3", "0.0174092776641677097"],
  ["0.4", "0.00109801956455780033"],
  ["0.5", "0.0000314439266875408765"],
] as const;
