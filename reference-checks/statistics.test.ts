import stdlibCdf from "@stdlib/stats-base-dists-t-cdf";
import stdlibQuantile from "@stdlib/stats-base-dists-t-quantile";
import {
  bivariateNormalBox,
  bivariateNormalCdf,
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareUpperTail,
  createRandom,
  fCdf,
  fQuantile,
  fUpperTail,
  incompleteBeta,
  incompleteGamma,
  logGamma,
  momentsOf,
  normalCdf,
  normalIntervalProbability,
  normalPdf,
  normalQuantile,
  normalUpperTail,
  type QuantileType,
  sampleQuantile,
  studentTCdf,
  studentTIntervalProbability,
  studentTQuantile,
  studentTUpperTail,
  summarise,
  summariseMoments,
} from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { generatorOf } from "../packages/statistics/src/generator.ts";
import { quarterRound } from "../packages/statistics/src/scramble.ts";
import samples from "./statistics-samples.json" with { type: "json" };
import tables from "./statistics-tables.json" with { type: "json" };
import values from "./statistics-values.json" with { type: "json" };
import { type Against, against, type Reference } from "./table/against.ts";

/**
 * What one rounding costs at most, relative to the result. Tolerances are counted in it: so many
 * roundings on the way, the one of the reference value to a double among them.
 */
const ROUNDING = 2 ** -53;

/**
 * Roundings of a probability that is the exponential of a sum: the exponent's own rounding is absolute, so it
 * costs as much more as the exponent, that is the logarithm of the probability, is large.
 */
function roundingsOfTail(probability: string): number {
  return 40 + 4 * Math.abs(Math.log(Number(probability)));
}

const WHY = "so many roundings of 2⁻⁵³ as the way to the result has; a far tail has more";
/** Probabilities below this are a far tail. */
const FAR = 1e-30;
const FAR_TAIL = "a far tail, below 1e-30: the rounding of its exponent grows with the exponent";
const DECIMAL = "decimal arguments: rounding them to doubles moves the result, as its condition tells";

function expectRelative(
  name: string,
  actual: number,
  reference: string,
  roundings: number,
  origin: Reference["origin"] = RECOMPUTED,
  why: string = WHY,
): void {
  const reason = why === WHY && Number(reference) > 0 && Number(reference) < FAR ? FAR_TAIL : why;
  against({ of: `statistics.${name}`, source: SOURCES[name] ?? DLMF, origin, why: reason }).relative(
    actual,
    reference,
    roundings * ROUNDING,
  );
}

/** Where the argument is a decimal, which a double only comes near. */
function expectDecimal(name: string, actual: number, reference: string, roundings: number): void {
  expectRelative(name, actual, reference, roundings, RECOMPUTED, DECIMAL);
}

const RECOMPUTED = "recomputed with mpmath 1.3, 50 digits and more; R 4.2.2 agrees";
const DLMF = "DLMF, chapters 5, 7 and 8";
const NIST = "NIST StRD, univariate summary statistics";
const CERTIFIED = "certified (15 digits)";
const CERTIFIED_DECIMALS = "certified (15 digits), held against moments of the doubles";
const SOURCES: Readonly<Record<string, string>> = {
  studentTCdf: "Student's t by DLMF 8.17",
  studentTUpperTail: "Student's t by DLMF 8.17",
  studentTQuantile: "Student's t by DLMF 8.17",
  studentTIntervalProbability: "Student's t by DLMF 8.17",
  summarise: NIST,
  summariseMoments: NIST,
  momentsOf: NIST,
  bivariateNormalBox: "bivariate normal by quadrature; quadrants by Sheppard 1898",
  bivariateNormalCdf: "bivariate normal by quadrature; quadrants by Sheppard 1898",
};

/** Three decimals of a table, as printed. */
const printedTable = (name: string): Against =>
  against({
    of: `statistics.${name}`,
    source: "tables of quantiles in any textbook",
    origin: "printed (from memory)",
    why: "the decimals that are printed",
  });

describe("normal distribution", () => {
  // Cody's and Wichura's approximations are good to 1 part in 10^18 and 10^16: what is left is rounding.
  test.each(values.normal)("tails at $z (mpmath)", ({ z, below, above }) => {
    expectRelative("normalCdf", normalCdf(z), below, 6);
    expectRelative("normalUpperTail", normalUpperTail(z), above, 6);
    expectRelative("normalUpperTail", normalUpperTail(-z), below, 6);
  });

  test.each(tables.normal.rows)("tails, density and coverage at $z (mpmath, R)", (row) => {
    const z = Number(row.z);
    // z is a decimal here: rounding it to a double moves tails and density by up to z² roundings.
    const roundings = 6 + z * z;
    expectDecimal("normalCdf", normalCdf(z), row.below, roundings);
    expectDecimal("normalUpperTail", normalUpperTail(z), row.above, roundings);
    expectDecimal("normalPdf", normalPdf(z), row.density, roundings);
    expectDecimal("normalIntervalProbability", normalIntervalProbability(-z, z), row.within, roundings);
  });

  test.each(values.normalQuantile)("quantile of $p (mpmath)", ({ p, z }) => {
    expectRelative("normalQuantile", normalQuantile(p), z, 8);
  });

  test.each(tables.normalQuantile.rows)("quantile of the decimal $p (mpmath, R)", (row) => {
    const p = Number(row.p);
    const z = Number(row.z);
    // p itself is rounded to a double, and its quantile feels that as its condition number says.
    const condition = p / (Math.abs(z) * Math.exp((-z * z) / 2) * 0.3989);
    expectDecimal("normalQuantile", normalQuantile(p), row.z, 8 + condition);
  });

  test.each(values.normalInterval)("between $a and $b (mpmath)", ({ a, b, p }) => {
    expectRelative("normalIntervalProbability", normalIntervalProbability(a, b), p, 8);
  });

  test.each(tables.normalInterval.rows)("between the decimals $a and $b (mpmath)", ({ a, b, p }) => {
    // Rounding a bound to a double moves the probability by up to the density there times the bound.
    const moved = [Number(a), Number(b)]
      .filter(Number.isFinite)
      .reduce((sum, z) => sum + Math.abs(z) * Math.exp((-z * z) / 2) * 0.3989, 0);
    expectDecimal(
      "normalIntervalProbability",
      normalIntervalProbability(Number(a), Number(b)),
      p,
      8 + moved / Number(p),
    );
  });
});

describe("Student's t distribution", () => {
  test.each(values.student)("above $t with $df degrees of freedom (mpmath)", ({ df, t, above }) => {
    expectRelative("studentTUpperTail", studentTUpperTail(t, df), above, roundingsOfTail(above));
    expectRelative("studentTCdf", studentTCdf(-t, df), above, roundingsOfTail(above));
  });

  test.each(tables.studentTail.rows)("at $t with $df degrees of freedom (mpmath, R)", (row) => {
    expectRelative("studentTCdf", studentTCdf(Number(row.t), Number(row.df)), row.below, 40);
    expectRelative(
      "studentTUpperTail",
      studentTUpperTail(Number(row.t), Number(row.df)),
      row.above,
      roundingsOfTail(row.above),
    );
  });

  // The quantile's condition is at most 1/df, for a far tail; 2 at df = 0.5.
  test.each(values.studentQuantile)("quantile of $p with $df degrees of freedom (mpmath)", ({ df, p, t }) => {
    expectRelative("studentTQuantile", studentTQuantile(p, df), t, 30);
  });

  test.each(tables.studentQuantile.rows)("quantiles with $df degrees of freedom (mpmath, R)", (row) => {
    expect(row.upperShares.length).toBeGreaterThan(0);
    row.upperShares.forEach((share, i) => {
      const t = -studentTQuantile(Number(share), Number(row.df));
      expectRelative("studentTQuantile", t, String(row.values[i]), 30);
    });
  });

  test.each(values.studentInterval)("between $a and $b with $df degrees (mpmath)", ({ df, a, b, p }) => {
    expectRelative(
      "studentTIntervalProbability",
      studentTIntervalProbability(a, b, df),
      p,
      roundingsOfTail(p),
    );
  });

  test.each(tables.printed.student)("t($df; $p) as printed: $printed", ({ df, p, printed }) => {
    printedTable("studentTQuantile").printed(studentTQuantile(Number(p), Number(df)), printed);
  });

  test("agrees with @stdlib, which is independent of the values above", () => {
    const stdlib = (name: string): Against =>
      against({
        of: `statistics.${name}`,
        source: "@stdlib/stats-base-dists-t",
        origin: "computed by @stdlib at every run",
        why: "@stdlib is good to 1e-13 in the tails and 1e-14 in the quantile (against mpmath)",
      });
    for (const df of [1, 2, 3.5, 9, 24, 77.7, 250, 5000]) {
      for (let t = -12; t <= 12; t += 0.37) {
        stdlib("studentTCdf").relative(studentTCdf(t, df), stdlibCdf(t, df), 5e-13);
      }
      for (let i = 1; i < 100; i += 1) {
        const theirs = stdlibQuantile(i / 100, df);
        const ours = studentTQuantile(i / 100, df);
        if (i === 50) stdlib("studentTQuantile").absolute(ours, theirs, 1e-15);
        else stdlib("studentTQuantile").relative(ours, theirs, 3e-14);
      }
    }
  });
});

describe("chi-square and F distributions, gamma and beta functions", () => {
  test.each([
    ...values.chiSquare.map(({ df, x, below, above }) => [x, df, below, above] as const),
    ...tables.chiSquare.rows.map(({ df, x, below, above }) => [Number(x), df, below, above] as const),
  ])("chi-square at %d with %d degrees of freedom (mpmath, R)", (x, df, below, above) => {
    expectRelative("chiSquareCdf", chiSquareCdf(x, df), below, roundingsOfTail(below));
    expectRelative("incompleteGamma", incompleteGamma(df / 2, x / 2), below, roundingsOfTail(below));
    // One tail is the complement of the other, where that is not small.
    expectRelative("chiSquareUpperTail", chiSquareUpperTail(x, df), above, 10 * roundingsOfTail(above));
  });

  test.each(tables.chiSquareQuantile.rows)("chi-square quantiles with $df degrees (mpmath, R)", (row) => {
    expect(row.shares.length).toBeGreaterThan(0);
    row.shares.forEach((share, i) => {
      // 0.995 as a double has an upper tail that is off by up to 200 roundings, and x feels less of it.
      expectDecimal(
        "chiSquareQuantile",
        chiSquareQuantile(Number(share), row.df),
        String(row.values[i]),
        100,
      );
    });
  });

  test.each(tables.printed.chiSquare)("chi-square($df; $p) as printed: $printed", ({ df, p, printed }) => {
    printedTable("chiSquareQuantile").printed(chiSquareQuantile(Number(p), Number(df)), printed);
  });

  test.each(values.f)("F at $x with $df1 and $df2 degrees (mpmath)", ({ df1, df2, x, below, above }) => {
    expectRelative("fCdf", fCdf(x, df1, df2), below, 10 * roundingsOfTail(below));
    expectRelative("fUpperTail", fUpperTail(x, df1, df2), above, 10 * roundingsOfTail(above));
  });

  test.each(tables.fQuantile.rows)("F quantiles with $df1 and $df2 degrees (mpmath, R)", (row) => {
    expect(row.shares.length).toBeGreaterThan(0);
    row.shares.forEach((share, i) => {
      expectDecimal("fQuantile", fQuantile(Number(share), row.df1, row.df2), String(row.values[i]), 100);
    });
  });

  test.each(values.incompleteBeta)("I at $x for $a and $b (mpmath)", ({ x, a, b, p }) => {
    expectRelative("incompleteBeta", incompleteBeta(x, a, b), p, roundingsOfTail(p));
  });

  test.each(values.logGamma)("ln gamma of $x (mpmath)", ({ x, value }) => {
    expectRelative("logGamma", logGamma(x), value, 8);
  });
});

describe("bivariate normal distribution", () => {
  // The error bound that bivariateNormalBox states.
  const ABSOLUTE = 3e-16;
  const absolute = (name: string, actual: number, expected: string): void =>
    against({
      of: `statistics.${name}`,
      source: SOURCES[name] ?? DLMF,
      origin: RECOMPUTED,
      why: "the absolute error that its docstring states",
    }).absolute(actual, expected, ABSOLUTE);

  test.each(values.bivariate)("$bounds at $rho (mpmath)", ({ bounds, rho, p }) => {
    const [l1, u1, l2, u2] = bounds.map(Number) as [number, number, number, number];
    absolute("bivariateNormalBox", bivariateNormalBox(l1, u1, l2, u2, rho), p);
  });

  test.each(tables.bivariateBox.rows)("$x by $y at $rho (mpmath, R mvtnorm)", ({ x, y, rho, p }) => {
    const [l1, u1] = x.map(Number) as [number, number];
    const [l2, u2] = y.map(Number) as [number, number];
    const box = bivariateNormalBox(l1, u1, l2, u2, Number(rho));
    absolute("bivariateNormalBox", box, p);
  });

  test.each(tables.bivariateOrthant.rows)("the quadrant at $rho (Sheppard)", ({ rho, p }) => {
    absolute("bivariateNormalCdf", bivariateNormalCdf(0, 0, Number(rho)), p);
  });

  test("a far corner keeps its relative accuracy", () => {
    // P(X <= -5, Y <= -5) at 0.9, where R's Miwa algorithm is off by a quarter of a percent.
    expectRelative("bivariateNormalCdf", bivariateNormalCdf(-5, -5, 0.9), "6.7219063674327192444e-8", 200);
  });
});

describe("sample quantiles", () => {
  const types: readonly QuantileType[] = [1, 2, 3, 4, 5, 6, 7, 8, 9];
  const quantiles = against({
    of: "statistics.sampleQuantile",
    source: samples.quantiles.source,
    origin: "recomputed with R 4.2.2, quantile(type = 1 to 9)",
    why: "both round the position; types 1 to 3 pick values and are the same",
  });

  test.each(samples.quantiles.samples)("of $values by all nine types (R)", ({ values: sample, byType }) => {
    expect(byType.length).toBe(types.length);
    const span = Math.max(...sample) - Math.min(...sample);
    types.forEach((type, row) => {
      samples.quantiles.shares.forEach((p, column) => {
        const theirs = byType[row]?.[column] ?? Number.NaN;
        // Both round the position, by up to 2^-52 of a place a step; types 1 to 3 pick values exactly.
        const allowed = type <= 3 ? 0 : 16 * ROUNDING * sample.length * span;
        quantiles.absolute(sampleQuantile(sample, p, type), theirs, allowed);
      });
    });
  });
});

describe("NIST StRD univariate summary statistics", () => {
  const sets = [
    ...samples.nist.listed,
    ...samples.nist.alternating.map(({ first, pair, ...rest }) => ({
      ...rest,
      data: [Number(first), ...Array.from({ length: 500 }, () => pair.map(Number)).flat()],
    })),
  ];

  test.each(sets)("$name", ({ n, mean, sd, sdOfDoubles, data }) => {
    expect(data.length).toBe(n);
    // Certified means have 15 digits, and the mean is a compensated sum: 5 units of the 15th digit.
    const summary = summarise(data);
    const merged = summariseMoments(momentsOf(data));
    expectRelative("summarise", summary.mean, mean, 5e-15 / ROUNDING, CERTIFIED);
    expectRelative("summariseMoments", merged.mean, mean, 5e-15 / ROUNDING, CERTIFIED);
    // A summary goes by the decimals as they are written: 13 digits of the certified deviation, or more.
    expectRelative("summarise", summary.sd ?? Number.NaN, sd, 5e-14 / ROUNDING, CERTIFIED);
    // Moments go by the doubles: against these, the deviations are exact but for the rounding of the mean.
    const offset = (Math.abs(Number(mean)) / Number(sd)) ** 2 * ROUNDING ** 2;
    expectRelative(
      "momentsOf",
      merged.sd ?? Number.NaN,
      sdOfDoubles,
      n + offset / ROUNDING,
      "recomputed with exact fractions of the doubles",
    );
    // Against the certified decimals: reading them as doubles moves a value by up to 2^-53 of itself.
    const reading = (2 * Number(mean)) / Number(sd);
    expectRelative(
      "summariseMoments",
      merged.sd ?? Number.NaN,
      sd,
      n + reading + 5e-15 / ROUNDING,
      CERTIFIED_DECIMALS,
    );
  });
});

describe("random numbers", () => {
  test("the quarter round is that of ChaCha (RFC 8439, section 2.1.1, printed)", () => {
    const result = quarterRound([0x11111111, 0x01020304, 0x9b8d6f43, 0x01234567]);
    expect(result.map((word) => word >>> 0)).toEqual([0xea2a92f4, 0xcb1cf8ce, 0x4581472e, 0x5881c4bb]);
  });

  test("the generator gives the published sequence of xoroshiro128+", () => {
    // From the state 1, 2, as the authors' C programme (version of 2018) gives it; printed in the tests of
    // the Rust crate rand_xoshiro. Ours gives the lower 32 bits.
    const published = [
      3n,
      412333834243n,
      2360170716294286339n,
      9295852285959843169n,
      2797080929874688578n,
      6019711933173041966n,
      3076529664176959358n,
      3521761819100106140n,
      7493067640054542992n,
      920801338098114767n,
    ];
    const generator = generatorOf([0, 1, 0, 2]);
    for (const number of published) {
      against({
        of: "statistics.createRandom",
        source:
          "xoroshiro128+ by Blackman & Vigna 2018, as printed in the tests of the Rust crate rand_xoshiro",
        origin: "printed",
        why: "whole numbers",
      }).same(generator.next() >>> 0, Number(number % 2n ** 32n));
    }
  });

  test.each(values.random)("seed $seed and labels $labels (programmed anew in Python)", (row) => {
    const random = row.labels.reduce((parent, label) => parent.fork(label), createRandom(row.seed));
    for (const whole of row.wholes) {
      against({
        of: "statistics.createRandom",
        source: "RFC 8439, section 2.1, and xoroshiro128+ by Blackman & Vigna 2018",
        origin: "recomputed in Python, programmed anew",
        why: "whole numbers over 2⁵³",
      }).same(random.uniform(), Number(whole) * ROUNDING);
    }
  });
});
