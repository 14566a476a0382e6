/**
 * Further published figures, each with its exact value.
 *
 * Sources
 * - Grubbs' test, one-sided: F. E. Grubbs (1950) by quantiles of Student's t, recomputed with mpmath 1.3 (50 digits).
 *   Printed: F. E. Grubbs & G. Beck (1972), ASTM E178, Table 1, from memory; printed to three decimals, off the formula by
 *   up to 0.0012 at the smallest numbers.
 * - Correlations in ANSUR II (Gordon et al. 2014, NATICK/TR-15/007), everybody in the public individual data: recomputed
 *   with exact sums in Python.
 * - Truncated normal statures and girths: recomputed with mpmath 1.3.
 *
 * Figures are text, so that none passes through a double on its way here.
 */

/** Number of values; one-sided critical values at 10, 5, 2.5, 1 and 0.5 %; printed ones at 5, 2.5, 1 and 0.5 %. */
export const grubbsOneSided: readonly {
  readonly n: number;
  readonly exact: readonly string[];
  readonly printed?: readonly string[];
}[] = [
  {
    n: 3,
    exact: [
      "1.1483749680116989",
      "1.1531180614225279",
      "1.1543048513440384",
      "1.1546372254160887",
      "1.1546847100299753",
    ],
    printed: ["1.153", "1.155", "1.155", "1.155"],
  },
  {
    n: 5,
    exact: [
      "1.6016348585180721",
      "1.6713856694849000",
      "1.7150373123433637",
      "1.7488568018497310",
      "1.7636784794977970",
    ],
    printed: ["1.672", "1.715", "1.749", "1.764"],
  },
  {
    n: 6,
    exact: [
      "1.7288803641158702",
      "1.8221196423426782",
      "1.8871451177839332",
      "1.9442451582963060",
      "1.9728167175443082",
    ],
    printed: ["1.822", "1.887", "1.944", "1.973"],
  },
  {
    n: 8,
    exact: [
      "1.9089494335123432",
      "2.0316520015499436",
      "2.1266450871954653",
      "2.2208334515104259",
      "2.2743651270798925",
    ],
    printed: ["2.032", "2.126", "2.221", "2.274"],
  },
  {
    n: 9,
    exact: [
      "1.9772649152218344",
      "2.1095617886142677",
      "2.2150042233255333",
      "2.3231484246058657",
      "2.3868098750709169",
    ],
    printed: ["2.110", "2.215", "2.323", "2.387"],
  },
  {
    n: 11,
    exact: [
      "2.0880136134412415",
      "2.2339077064682864",
      "2.3547300515655384",
      "2.4842790340518086",
      "2.5641212520012981",
    ],
    printed: ["2.234", "2.355", "2.485", "2.564"],
  },
  {
    n: 12,
    exact: [
      "2.1340985500336734",
      "2.2849530395577814",
      "2.4115595184316524",
      "2.5494170879207786",
      "2.6357330437345000",
    ],
    printed: ["2.285", "2.412", "2.550", "2.636"],
  },
  {
    n: 14,
    exact: [
      "2.2131981172688645",
      "2.3716535803438089",
      "2.5073208525788401",
      "2.6584800797747296",
      "2.7553724049415593",
    ],
    printed: ["2.371", "2.507", "2.659", "2.755"],
  },
  {
    n: 15,
    exact: [
      "2.2476213083631337",
      "2.4090384205900983",
      "2.5483077717433440",
      "2.7048553735097805",
      "2.8061052912205915",
    ],
    printed: ["2.409", "2.549", "2.705", "2.806"],
  },
  {
    n: 17,
    exact: [
      "2.3086344960865969",
      "2.4748096604617954",
      "2.6199636398344378",
      "2.7854452735144494",
      "2.8940137954244261",
    ],
    printed: ["2.475", "2.620", "2.785", "2.894"],
  },
  {
    n: 18,
    exact: [
      "2.3359109799936566",
      "2.5040173902269121",
      "2.6515991201297915",
      "2.8208173035637419",
      "2.9324821543932841",
    ],
    printed: ["2.504", "2.651", "2.821", "2.932"],
  },
  {
    n: 20,
    exact: [
      "2.3852746844697941",
      "2.5565813344927571",
      "2.7082456458057543",
      "2.8838211363177569",
      "3.0008041573404599",
    ],
    printed: ["2.557", "2.709", "2.884", "3.001"],
  },
  {
    n: 25,
    exact: [
      "2.4861427404895794",
      "2.6628731295085014",
      "2.8216812378051956",
      "3.0086449368303005",
      "3.1353276893801689",
    ],
  },
  {
    n: 40,
    exact: [
      "2.6840449774198568",
      "2.8675424870552616",
      "3.0360973845112138",
      "3.2394819189296758",
      "3.3806834758341687",
    ],
  },
  {
    n: 50,
    exact: [
      "2.7719052245695281",
      "2.9569748471494872",
      "3.1282473343309718",
      "3.3366243107493142",
      "3.4824617998038169",
    ],
  },
];

/** Two further samples of worked examples: values, where the farthest stands, and its statistic. */
export const grubbsSamples = [
  {
    name: "ten values of a test of Dixon's (D. B. Rorabacher 1991), from memory",
    values: ["0.189", "0.167", "0.187", "0.183", "0.186", "0.182", "0.181", "0.184", "0.181", "0.177"],
    index: 1,
    statistic: "2.3704881564713852",
    critical: "2.2899540844796004",
  },
  {
    name: "six values without an outlier (example of octave-samplestat)",
    values: ["6", "8", "14", "12", "5", "15"],
    index: 5,
    statistic: "1.1785113019775792",
    critical: "1.8871451177839332",
  },
] as const;

/** Correlations of everybody in ANSUR II, by the survey's own names. */
export const ansurCorrelations: readonly (readonly [
  cut: "women" | "men",
  x: string,
  y: string,
  people: number,
  r: string,
])[] = [
  ["men", "stature", "cervicaleheight", 4082, "0.98413535661495625"],
  ["men", "cervicaleheight", "iliocristaleheight", 4082, "0.92353248287936476"],
  ["men", "buttockcircumference", "hipbreadth", 4082, "0.93131852612558154"],
  ["men", "chestcircumference", "waistcircumference", 4082, "0.88597098303466741"],
  ["men", "stature", "buttockcircumference", 4082, "0.33962071055604742"],
  ["women", "stature", "cervicaleheight", 1986, "0.98424273579388929"],
  ["women", "stature", "iliocristaleheight", 1986, "0.91541773720369991"],
  ["women", "buttockcircumference", "hipbreadth", 1986, "0.94243101775289576"],
  ["women", "buttockcircumference", "waistcircumference", 1986, "0.80251989493580683"],
  ["women", "stature", "buttockcircumference", 1986, "0.3788350820400673"],
  ["women", "waistbacklength", "cervicaleheight", 1986, "0.5269185038907672"],
];

/** Statures above 175 cm and girths of one size: mean, deviation and share of what is left of a normal distribution. */
export const truncated = [
  {
    mean: 1628.5,
    sd: 64.2,
    from: 1750,
    to: Number.POSITIVE_INFINITY,
    share: "0.029210641818940457027",
    leftMean: "1774.7715060442795748",
    leftSd: "22.322063164462467606",
  },
  {
    mean: 1019.5,
    sd: 76.7,
    from: 960,
    to: 1000,
    share: "0.18070772057507911957",
    leftMean: "980.88611486946314887",
    leftSd: "11.474373549594842271",
  },
] as const;
