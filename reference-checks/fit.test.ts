import type { Size } from "@tapewise/charts";
import { formBeliefs, holdAgainst, recommend } from "@tapewise/fit";
import { atLeast, atMost, interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { chartOf, estimateOf, priorOf, sizeOf, sureEstimate, torsoChart } from "../tests/fit/cases.ts";
import { boxes, cuboids, memberships, misfitCases, rectangles, upperParts } from "./fit-figures.ts";
import { against } from "./table/against.ts";

/** Agreement to so many units of the value itself. */
function expectClose(of: string, actual: number, expected: number, relative: number): void {
  against({ of: `fit.${of}`, source: QUADRATURE, origin: "recomputed with mpmath", why: ROUNDING }).relative(
    actual,
    expected,
    relative,
  );
}

const QUADRATURE = "quadrature of the density of the length; JCGM 106:2012, A.4 for beliefs";
const ROUNDING = "roundings of lengths in mm, and of tails that nearly cancel";

function expectProbability(source: string, actual: number, expected: number, off: number): void {
  against({
    of: "fit.recommend",
    source,
    origin: "recomputed with mpmath and R mvtnorm",
    why: "absolute error of the box; more than four dimensions are on a coarser grid",
  }).absolute(actual, expected, off);
}

describe("a length against an interval (mpmath)", () => {
  test.each(misfitCases)("$meanMm ± $sdMm mm, $degreesOfFreedom degrees, [$from, $to]", (one) => {
    const fit = holdAgainst(one, interval(one.from, one.to));
    expectClose("holdAgainst", fit.below, one.below, 1e-12);
    expectClose("holdAgainst", fit.inside, one.inside, 1e-12);
    expectClose("holdAgainst", fit.above, one.above, 1e-12);
    expectClose("holdAgainst", fit.expectedMisfitMm, one.misfitMm, 1e-12);
  });
});

describe("the part of a normal length beyond an end (mpmath)", () => {
  // In the far tail z Φ(z) and φ(z) nearly cancel, so that about z² times the rounding is lost.
  test.each(upperParts)("above $a", ({ a, mass, mean }) => {
    const standard = { meanMm: 0, sdMm: 1, degreesOfFreedom: Number.POSITIVE_INFINITY };
    const fit = holdAgainst(standard, atMost(a));
    expectClose("holdAgainst", fit.above, mass, 1e-13);
    expectClose("holdAgainst", fit.expectedMisfitMm, mass * (mean - a), 1e-14 * (1 + 10 * a ** 2));
    expect(holdAgainst(standard, atLeast(-a)).expectedMisfitMm).toBe(fit.expectedMisfitMm);
  });
});

/** The probability of one size under a prior of standard normal variables, stretched to 10 mm about 450 mm. */
function probabilityOf(
  ranges: readonly (readonly [number, number])[],
  rho: (i: number, j: number) => number,
): number {
  const names: readonly DimensionId[] = [
    "torso-length",
    "back-waist-length",
    "shoulder-breadth",
    "chest-girth",
    "waist-girth",
  ];
  const dimensions = names.slice(0, ranges.length);
  const prior: Prior = {
    ...priorOf({}),
    dimensions,
    meanMm: dimensions.map(() => 450),
    covarianceMm2: dimensions.map((_, i) => dimensions.map((_, j) => (i === j ? 100 : 100 * rho(i, j)))),
  };
  const cells = ranges.map(([from, to], i) => [dimensions[i], interval(450 + 10 * from, 450 + 10 * to)]);
  const size: Size = sizeOf("M", Object.fromEntries(cells));
  return unwrap(recommend({ estimates: [], prior }, chartOf([size]), { unit: "cm" })).probability;
}

describe("two correlated dimensions in a size (mpmath, R mvtnorm)", () => {
  test.each(rectangles)("$x by $y, correlation $rho", ({ x, y, rho, probability }) => {
    expectProbability(
      "two jointly normal dimensions",
      probabilityOf([x, y], () => rho),
      probability,
      1e-14,
    );
  });
});

describe("three correlated dimensions in a size (R mvtnorm)", () => {
  test.each(cuboids)("$lower to $upper, correlations $rho", ({ lower, upper, rho, probability }) => {
    const ranges = lower.map((from, i) => [from, upper[i] ?? Number.NaN] as const);
    // Correlations stand in the order 12, 13, 23: the sum of the positions less one.
    const ours = probabilityOf(ranges, (i, j) => rho[i + j - 1] ?? 0);
    expectProbability("three jointly normal dimensions", ours, probability, 1e-10);
  });
});

describe("several dimensions that all depend on one (mpmath)", () => {
  // Up to four are exact but for rounding, which the lengths in mm add to; five are on a coarser grid.
  test.each(boxes)("loadings $loadings", ({ ranges, loadings, probability }) => {
    const rho = (i: number, j: number) => (loadings[i] ?? 0) * (loadings[j] ?? 0);
    const off = ranges.length > 4 ? 2e-5 : 1e-11;
    const source = ranges.length > 4 ? "five dimensions of one factor" : "dimensions of one factor";
    expectProbability(source, probabilityOf(ranges, rho), probability, off);
  });
});

describe("readings of somebody out of a population (mpmath; form of JCGM 106:2012, A.4)", () => {
  test.each(memberships)("$count of $meanMm mm", (one) => {
    const { edges, meanMm, count, readingSdMm } = one;
    const error = { biasMm: 0, repeatMm: readingSdMm, resolutionMm: 0 };
    const readings = Array.from({ length: count }, () => `${meanMm} mm`);
    const estimate = estimateOf("hip-belt-girth", readings, error);
    const prior = priorOf({ "hip-belt-girth": [one.populationMeanMm, one.populationSdMm] });

    const belief = formBeliefs([estimate], prior).of("hip-belt-girth");
    expectClose("formBeliefs", belief?.meanMm ?? Number.NaN, one.posteriorMeanMm, 1e-13);
    expectClose("formBeliefs", belief?.sdMm ?? Number.NaN, one.posteriorSdMm, 1e-13);

    const middle = edges.slice(1).map((to, i) => interval(edges[i] ?? Number.NaN, to));
    const ranges = [atMost(edges.at(0) ?? Number.NaN), ...middle, atLeast(edges.at(-1) ?? Number.NaN)];
    const sizes = ranges.map((range, i) => sizeOf(`${i}`, { "hip-belt-girth": range }));
    const fitsOf = (known: { readonly prior?: Prior }) =>
      unwrap(recommend({ estimates: [estimate], ...known }, chartOf(sizes), { unit: "cm" })).sizes;
    fitsOf({ prior }).forEach((fit, i) => {
      expectClose("recommend", fit.probability, one.posterior[i] ?? Number.NaN, 1e-11);
    });
    fitsOf({}).forEach((fit, i) => {
      expectClose("recommend", fit.probability, one.flat[i] ?? Number.NaN, 1e-11);
    });
  });
});

test("what an answer states is what its length against its interval gives", () => {
  const [one] = misfitCases;
  if (one === undefined) throw new Error("no case");
  const chart = torsoChart({ M: [one.from, one.to] });
  const estimates = [sureEstimate("torso-length", one.meanMm, one.sdMm)];
  const [fit] = unwrap(recommend({ estimates }, chart, { unit: "cm" })).sizes;
  expectClose("recommend", fit?.probability ?? Number.NaN, one.inside, 1e-12);
  expectClose("recommend", fit?.expectedMisfitMm ?? Number.NaN, one.misfitMm, 1e-12);
});
