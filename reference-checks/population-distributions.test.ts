import { interval } from "@tapewise/intervals";
import {
  lognormalDistribution,
  normalBoxProbability,
  normalJoint,
  owensT,
  skewNormalDistribution,
  truncatedNormal,
} from "@tapewise/population";
import { describe, expect, test } from "vitest";
import fits from "./population-fits.json" with { type: "json" };
import values from "./population-values.json" with { type: "json" };
import { type Against, against } from "./table/against.ts";

/** JSON has no infinities. */
function bound(value: number | string): number {
  if (value === "inf" || value === "Inf") return Number.POSITIVE_INFINITY;
  return value === "-inf" || value === "-Inf" ? Number.NEGATIVE_INFINITY : Number(value);
}

function expectRelative(of: string, actual: number, reference: string, tolerance: number): void {
  const row = mpmath(of, "tens of roundings; the far and the short tail cost more");
  // A mean or skewness that is 0 by symmetry comes out as some 1e-48 of quadrature.
  if (Math.abs(Number(reference)) < 1e-40) row.absolute(actual, 0, tolerance);
  else row.relative(actual, reference, tolerance);
}

const mpmath = (of: string, why: string): Against =>
  against({
    of: `population.${of}`,
    source: "definitions by quadrature; Owen's T also at the points of Patefield & Tandy 2000",
    origin: "recomputed with mpmath",
    why,
  });
const mvtnorm = against({
  of: "population.normalBoxProbability",
  source: "R mvtnorm: TVPACK for three variables, Genz & Bretz for four",
  origin: "recomputed with R 4.2.2, mvtnorm",
  why: "our own error is below 1e-9 for three, 1e-6 for four; theirs about 2e-8 for four",
});

describe(`univariate families (${values.origin})`, () => {
  // 1e-12 is what the docstring promises, relative to the result.
  test.each(values.owensT.rows)("Owen's T of $h and $a", ({ h, a, t }) => {
    expectRelative("owensT", owensT(h, a), t, 1e-12);
    expectRelative("owensT", owensT(-h, -a), `-${t}`, 1e-12);
  });

  // Some tens of roundings, and in the short tail of the skew-normal those of the quadrature.
  test.each(values.skewNormal.rows)("skew-normal of shape $alpha at $z", (row) => {
    const unit = skewNormalDistribution({ location: 0, scale: 1, shape: row.alpha });
    expectRelative("skewNormalDistribution", unit.density(row.z), row.density, 1e-13);
    expectRelative("skewNormalDistribution", unit.cumulative(row.z), row.below, 1e-12);
    expectRelative("skewNormalDistribution", unit.mean, row.mean, 1e-14);
    expectRelative("skewNormalDistribution", unit.variance, row.variance, 1e-14);
    expectRelative("skewNormalDistribution", unit.skewness, row.skewness, 1e-13);
    // In mm: a girth with that shape.
    const girth = skewNormalDistribution({ location: 760, scale: 140, shape: row.alpha });
    expectRelative("skewNormalDistribution", girth.cumulative(760 + 140 * row.z), row.below, 1e-10);
    // Close to 1 a double no longer tells where it is.
    if (Number(row.below) < 0.999) {
      expect(girth.quantile(Number(row.below))).toBeCloseTo(760 + 140 * row.z, 6);
    }
  });

  test.each(values.truncatedNormal.rows)("truncated normal from $from to $to", (row) => {
    const [from, to] = [bound(row.from), bound(row.to)];
    const unit = truncatedNormal({ mean: 0, sd: 1, from, to });
    expectRelative("truncatedNormal", unit.parameters.share ?? 0, row.share, 1e-13);
    expectRelative("truncatedNormal", unit.mean, row.mean, 1e-13);
    expectRelative("truncatedNormal", unit.variance, row.variance, 1e-12);
    // A skewness near 0 is what is left of larger terms: absolute there.
    mpmath("truncatedNormal", "a skewness near 0 is what is left of larger terms").absolute(
      unit.skewness,
      row.skewness,
      1e-10,
    );
  });

  test.each(values.lognormal.rows)("lognormal of $meanLog and $sdLog", (row) => {
    const distribution = lognormalDistribution({ meanLog: row.meanLog, sdLog: row.sdLog });
    expectRelative("lognormalDistribution", distribution.mean, row.mean, 1e-14);
    expectRelative("lognormalDistribution", distribution.sd, row.sd, 1e-14);
    expectRelative("lognormalDistribution", distribution.skewness, row.skewness, 1e-14);
    expect(row.quantiles).toHaveLength(7);
    for (const { share, value } of row.quantiles)
      expectRelative("lognormalDistribution", distribution.quantile(share), value, 1e-14);
  });
});

describe("boxes of jointly normal variables", () => {
  const about = { label: "standard normal variables", source: "made up", caveat: "" };

  test.each(values.bivariateBox.rows)("two variables, correlation $rho (mpmath)", ({ x, y, rho, p }) => {
    const model = normalJoint({
      about,
      variables: ["stature", "torso-length"],
      mean: [0, 0],
      covariance: [
        [1, rho],
        [rho, 1],
      ],
    });
    const [x0, x1, y0, y1] = [...x, ...y].map(bound);
    const box = { stature: interval(x0 ?? 0, x1 ?? 0), "torso-length": interval(y0 ?? 0, y1 ?? 0) };
    const { probability, error } = model.boxProbability(box);
    mpmath("normalJoint", "the error that is told beside the probability").absolute(probability, p, error);
    expect(error).toBeLessThanOrEqual(1e-15);
  });

  test.each(values.trivariateOrthant.rows)("octants of three variables, correlations $r", ({ r, p }) => {
    const [a = 0, b = 0, c = 0] = r;
    const correlation = [
      [1, a, b],
      [a, 1, c],
      [b, c, 1],
    ];
    const below = [0, 0, 0];
    const open = below.map(() => Number.NEGATIVE_INFINITY);
    const { probability, error } = normalBoxProbability(open, below, correlation);
    mpmath("normalBoxProbability", "the error that is promised for three variables").absolute(
      probability,
      p,
      1e-9,
    );
    expect(error).toBeLessThanOrEqual(1e-9);
  });

  // TVPACK is exact to 1e-14; 15 printed digits.
  test.each(fits.boxOfThree)("three variables within $lower to $upper (R, mvtnorm)", (row) => {
    const { probability } = normalBoxProbability(row.lower.map(bound), row.upper.map(bound), row.correlation);
    mvtnorm.absolute(probability, row.p, 1e-9);
  });

  // Its error estimate, three standard errors, is about 2e-8.
  test.each(fits.boxOfFour)("four variables within $lower to $upper (R, mvtnorm)", (row) => {
    const { probability, error } = normalBoxProbability(
      row.lower.map(bound),
      row.upper.map(bound),
      row.correlation,
    );
    mvtnorm.absolute(probability, row.p, error + 1e-7);
    expect(error).toBeLessThanOrEqual(1e-6);
  });

  test.each(values.oneFactorBox.rows)("$loadings.length variables of one factor (mpmath)", (row) => {
    const correlation = row.loadings.map((a, i) => row.loadings.map((b, j) => (i === j ? 1 : a * b)));
    const { probability, error } = normalBoxProbability(
      row.lower.map(bound),
      row.upper.map(bound),
      correlation,
    );
    const size = row.loadings.length;
    // The error that is told, and what the docs promise for it.
    mpmath(
      "normalBoxProbability",
      `the error that is told beside it, for ${size === 3 ? "three" : size < 6 ? "four and five" : "six and more"} of one factor`,
    ).absolute(probability, row.p, error);
    expect(error).toBeLessThanOrEqual(size === 3 ? 1e-9 : size < 6 ? 1e-6 : 1e-4);
  });
});
