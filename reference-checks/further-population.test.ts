import { unwrap } from "@tapewise/outcome";
import {
  bootstrapInterval,
  chooseFamily,
  empiricalDistribution,
  empiricalJoint,
  type FittedFamily,
  mixtureDistribution,
  mixtureJoint,
  normalDistribution,
  normalJoint,
  percentileInterval,
  priorFrom,
  qqPoints,
  questionGiven,
  readSurvey,
  referenceMixture,
  referencePopulation,
  reweight,
  safeSurveyNormal,
  safeSurveyPeople,
  samplePercentile,
  surveySample,
  trimmedSummary,
  truePercentiles,
  type Variable,
  weightedSummary,
  withLognormal,
} from "@tapewise/population";
import { createRandom, type QuantileType } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import further from "./further-values.json" with { type: "json" };
import fits from "./population-fits.json" with { type: "json" };
import survey from "./population-survey.json" with { type: "json" };
import values from "./population-values.json" with { type: "json" };
import { type Against, against, type Reference } from "./table/against.ts";

const { population } = further;
const origin = further.origin as Reference["origin"];
const row = (name: string, source: string, why: string, from: Reference["origin"] = origin): Against =>
  against({ of: `population.${name}`, source, origin: from, why });
const TENS = "tens of roundings";
const about = { label: "invented people", source: "invented", caveat: "for a test" };
const variables: readonly Variable[] = ["stature", "torso-length", "waist-girth"];

describe("samples", () => {
  const { values: sample, weights } = population;

  test("weighted", () => {
    const ours = weightedSummary(sample, weights);
    const numpy = row("weightedSummary", "NumPy's weighted average; Kish's effective number", TENS);
    numpy.relative(ours.mean, population.weighted.mean, 1e-14);
    numpy.relative(ours.effectivePeople, population.weighted.kish, 1e-14);
    numpy.relative(ours.sd, population.weighted.sd, 1e-13);
    numpy.relative(ours.standardError, population.weighted.standardError, 1e-13);
  });

  test("trimmed", () => {
    const ours = trimmedSummary(sample, 0.2);
    const scipy = row("trimmedSummary", "SciPy's trim_mean and winsorize; Yuen 1974", TENS);
    scipy.same(ours.leftOutEach, population.trimmed.each);
    scipy.relative(ours.mean, population.trimmed.mean, 1e-14);
    scipy.relative(ours.standardError, population.trimmed.standardError, 1e-13);
  });

  test.each(population.quantiles)("weighted quantile of $p, type $type", ({ p, type, value }) => {
    row(
      "samplePercentile",
      "NumPy's weighted quantile (type 1); Akinshin 2023 in exact fractions (types 4 to 9)",
      TENS,
    ).relative(samplePercentile(sample, p, type as QuantileType, weights), value, 1e-13);
  });

  test.each(population.percentileIntervals)("the $p quantile of $n by order statistics", (one) => {
    // Values that are their own ranks.
    const ranks = Array.from({ length: one.n }, (_, i) => i + 1);
    const ours = percentileInterval(ranks, one.p, one.confidence);
    const binomial = row(
      "percentileInterval",
      "David & Nagaraja 2003, 7.1, by SciPy's binomial",
      "SciPy's binomial",
    );
    binomial.same([ours.lower ?? null, ours.upper ?? null], [one.lower, one.upper], 2);
    binomial.absolute(ours.coverage, one.coverage, 1e-12);
  });

  test("quantile by quantile beside a normal distribution", () => {
    const points = qqPoints(sample, normalDistribution({ mean: 425, sd: 26 }));
    const scipy = row("qqPoints", "Hazen's shares, SciPy's normal quantile", TENS);
    population.qq.expected.forEach((expected, i) => {
      scipy.relative(points[i]?.expected, expected, 1e-13);
      scipy.same(points[i]?.observed, population.qq.sorted[i]);
    });
  });

  test("the bootstrap's standard error of a mean is σ/√n", () => {
    const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length;
    const { standardError } = bootstrapInterval(sample, mean, { random: createRandom(4), replicates: 4000 });
    row(
      "bootstrapInterval",
      "Efron & Tibshirani 1993: σ/√n of the sample",
      "five standard errors of 4000 draws",
    ).relative(standardError, population.bootstrapSe, 5 / Math.sqrt(8000));
  });

  test("families in the order of AIC, by R's likelihoods", () => {
    const families: readonly FittedFamily[] = ["normal", "lognormal", "skew-normal", "mixture"];
    const aic = families.map((family) => {
      const { logLikelihood, parameters } = fits.fits[family];
      return { family, value: 2 * parameters.length - 2 * logLikelihood };
    });
    const best = Math.min(...aic.map(({ value }) => value));
    const sum = aic.reduce((total, { value }) => total + Math.exp((best - value) / 2), 0);
    const ranked = chooseFamily(fits.girths);
    const byR = row(
      "chooseFamily",
      "Akaike's weights from R's likelihoods",
      "a likelihood is flat at its maximum",
      "recomputed with R 4.2.2, optim",
    );
    for (const { family, value } of aic) {
      const ours = ranked.find(({ fit }) => fit.family === family);
      byR.absolute(ours?.behind, value - best, 1e-6);
      byR.relative(ours?.weight, Math.exp((best - value) / 2) / sum, 1e-6);
    }
  });

  test("percentiles of people, the error of reading taken out", () => {
    const { rows, percentiles } = population.repeated;
    const ours = truePercentiles(
      { people: rows },
      percentiles.map(({ share }) => share),
      { shape: "normal" },
    );
    percentiles.forEach(({ value }, i) => {
      row("truePercentiles", "mean squares by NumPy, normal quantile by SciPy", TENS).relative(
        ours[i]?.value,
        value,
        1e-13,
      );
    });
  });
});

describe("distributions", () => {
  test.each(population.normal)("normal at $x", (one) => {
    const ours = normalDistribution({ mean: one.mean, sd: one.sd });
    const mpmath = row("normalDistribution", "DLMF 7.2", "the far tail feels the rounding of its argument");
    mpmath.relative(ours.cumulative(one.x), one.below, 1e-14);
    mpmath.relative(ours.upperTail(one.x), one.above, 1e-14);
    mpmath.relative(ours.density(one.x), one.density, 1e-14);
  });

  test.each(population.normalQuantiles)("normal quantile of $p", ({ p, x }) => {
    row("normalDistribution", "DLMF 7.2", "the far tail feels the rounding of its argument").relative(
      normalDistribution({ mean: 400, sd: 22.7 }).quantile(p),
      x,
      1e-15,
    );
  });

  test("a mixture of two", () => {
    const { parts, mean, variance, skewness, points, quantiles } = population.mixture;
    const ours = mixtureDistribution(
      parts.map(([weight = 0, at = 0, sd = 1]) => ({
        weight,
        distribution: normalDistribution({ mean: at, sd }),
      })),
    );
    const mpmath = row("mixtureDistribution", "moments and shares of a mixture", TENS);
    mpmath.relative(ours.mean, mean, 1e-15);
    mpmath.relative(ours.variance, variance, 1e-14);
    mpmath.relative(ours.skewness, skewness, 1e-13);
    for (const { x, below, density } of points) {
      mpmath.relative(ours.cumulative(x), below, 1e-14);
      mpmath.relative(ours.density(x), density, 1e-14);
    }
    for (const { p, x } of quantiles) mpmath.relative(ours.quantile(p), x, 1e-13);
  });

  test("a sample as it is", () => {
    const { mean, variance, skewness, width, density, quantiles, below } = population.empirical;
    const ours = empiricalDistribution(population.values);
    const numpy = row(
      "empiricalDistribution",
      "NumPy's moments and quantiles; Silverman 1986, eq. 3.31",
      TENS,
    );
    numpy.relative(ours.mean, mean, 1e-14);
    numpy.relative(ours.variance, variance, 1e-13);
    numpy.relative(ours.skewness, skewness, 1e-12);
    numpy.relative(ours.parameters.kernelWidth, width, 1e-13);
    for (const { x, value } of density) numpy.relative(ours.density(x), value, 1e-12);
    for (const { p, x } of quantiles) numpy.same(ours.quantile(p), x);
    for (const { x, share } of below) numpy.relative(ours.cumulative(x), share, 1e-15);
  });
});

describe("joint models", () => {
  const { people, peopleWeights, joint, unweighted } = population;
  const crew = empiricalJoint({ about, variables, people, weights: peopleWeights });
  const matrix = (
    check: Against,
    ours: readonly (readonly number[])[],
    theirs: readonly (readonly number[])[],
  ) => {
    expect(ours).toHaveLength(theirs.length);
    theirs.forEach((line, i) => {
      line.forEach((value, j) => {
        if (Math.abs(value) < 1e-9) check.absolute(ours[i]?.[j], value, 1e-9);
        else check.relative(ours[i]?.[j], value, 1e-10);
      });
    });
  };

  test("measured people, and those of a stature", () => {
    const numpy = row(
      "empiricalJoint",
      "NumPy's weighted covariances and regression",
      "sums of squares about a mean",
    );
    crew.mean.forEach((mean, i) => {
      numpy.relative(mean, joint.mean[i] ?? "", 1e-13);
    });
    matrix(numpy, crew.covariance, joint.covariance);
    numpy.relative(crew.effectivePeople, joint.effective, 1e-13);
    const given = crew.conditional({ stature: millimetres(joint.given) });
    given.mean.forEach((mean, i) => {
      numpy.relative(mean, joint.givenMean[i] ?? "", 1e-12);
    });
    matrix(numpy, given.covariance, joint.givenCovariance);
  });

  test("people of another distribution of stature", () => {
    const { mean, variance, means, covariance } = population.reweight;
    const model = normalJoint({ about, variables, mean: joint.mean, covariance: joint.covariance });
    const target = normalJoint({ about, variables: ["stature"], mean: [mean], covariance: [[variance]] });
    const ours = reweight(model, target);
    const lawley = row("reweight", "Pearson–Lawley selection formulae by NumPy", TENS);
    ours.mean.forEach((value, i) => {
      lawley.relative(value, means[i] ?? "", 1e-12);
    });
    matrix(
      lawley,
      ours.covariance.slice(1).map((line) => line.slice(1)),
      covariance,
    );
  });

  test("a survey read from text", () => {
    const text = ["stature,torso,waist", ...people.map((line) => line.join(","))].join("\n");
    const read = readSurvey(text, {
      about,
      dimensions: {
        stature: { column: "stature", unit: "mm" },
        "torso-length": { column: "torso", unit: "mm" },
        "waist-girth": { column: "waist", unit: "mm" },
      },
    });
    const normal = unwrap(safeSurveyNormal(read, variables));
    const counted = unwrap(safeSurveyPeople(read, variables));
    for (const [name, model] of [
      ["safeSurveyNormal", normal],
      ["safeSurveyPeople", counted],
    ] as const) {
      const numpy = row(name, "NumPy's means and covariances", "sums of squares about a mean");
      model.mean.forEach((mean, i) => {
        numpy.relative(mean, unweighted.mean[i] ?? "", 1e-13);
      });
      // Of the people themselves the covariance divides by n, of the model by n − 1.
      const scale = name === "safeSurveyPeople" ? 24 / 25 : 1;
      matrix(
        numpy,
        model.covariance,
        unweighted.covariance.map((line) => line.map((value) => value * scale)),
      );
    }
    row("surveySample", "the numbers of the text", "the numbers themselves", "worked by hand").same(
      surveySample(read, "torso-length").values,
      people.map(([, torso]) => torso),
      people.length,
    );
  });

  test("a mixture of women and men: the share of each by their densities at a stature", () => {
    // Bayes by the normal densities at 1,750 mm, of means and variances that R has.
    const at = 1750;
    const parts = (["women", "men"] as const).map((cut) => {
      const model = referencePopulation(cut).marginal(["stature", "torso-length"]);
      return { cut, model, mean: model.mean[0] ?? 0, sd: Math.sqrt(model.covariance[0]?.[0] ?? 0) };
    });
    const densities = parts.map(({ mean, sd }) => Math.exp(-(((at - mean) / sd) ** 2) / 2) / sd);
    const whole = densities.reduce((sum, each) => sum + each, 0);
    const mixed = mixtureJoint({ about, parts: parts.map(({ model }) => ({ weight: 1, model })) });
    const bayes = row("mixtureJoint", "Bayes' theorem by normal densities", TENS, "worked by hand");
    mixed.conditional({ stature: millimetres(at) }).parts.forEach(({ weight }, i) => {
      bayes.relative(weight, (densities[i] ?? 0) / whole, 1e-12);
    });
    const reference = referenceMixture({ women: 1, men: 1 });
    const mean = (parts[0]?.mean ?? 0) / 2 + (parts[1]?.mean ?? 0) / 2;
    row("referenceMixture", "the mean of two means", TENS, "worked by hand").relative(
      reference.distribution("stature").mean,
      mean,
      1e-14,
    );
  });

  test.each(["women", "men"] as const)("a prior of %s of a stature is R's regression", (cut) => {
    const { statureMm, massKg, given } = survey[cut];
    const torso = given.find(({ column }) => column === "torso");
    const prior = priorFrom(
      referencePopulation(cut),
      { stature: millimetres(statureMm), "mass-kg": massKg },
      { dimensions: ["torso-length"] },
    );
    const byR = row(
      "priorFrom",
      "ANSUR II (Gordon et al. 2014), regression on stature and body mass",
      "the carried covariances have four decimals",
      "recomputed with R 4.2.2",
    );
    byR.absolute(prior.meanMm[0], torso?.mean ?? "", 5e-4);
    byR.absolute(Math.sqrt(prior.covarianceMm2[0]?.[0] ?? 0), torso?.sd ?? "", 5e-5);
  });

  test.each(values.lognormal.rows)("a girth that is lognormal, $meanLog and $sdLog", (one) => {
    const normal = normalJoint({
      about,
      variables: ["waist-girth"],
      mean: [Number(one.mean)],
      covariance: [[Number(one.sd) ** 2]],
    });
    const girth = withLognormal(normal, ["waist-girth"]).distribution("waist-girth");
    for (const { share, value } of one.quantiles) {
      row(
        "withLognormal",
        "quantiles of a lognormal distribution with that mean and spread",
        TENS,
        "recomputed with mpmath",
      ).relative(girth.quantile(share), value, 1e-13);
    }
  });

  test("a reading that is two and a half standard deviations off", () => {
    const model = normalJoint({
      about,
      variables: ["torso-length"],
      mean: [400],
      covariance: [[12 ** 2 * 9]],
    });
    // σ² + u² = 36² + 15² = 39²; 400 + 2.5 · 39 = 497.5
    const reading = { dimension: "torso-length", mm: millimetres(497.5), uncertaintyMm: 15 } as const;
    const check = questionGiven(model, {}, reading);
    const tail = row("questionGiven", "2 Φ(−2.5) by mpmath", TENS);
    tail.relative(check.score, 2.5, 1e-15);
    tail.relative(check.tailProbability, population.unlikely.tail, 1e-14);
    expect(values.origin).toContain("mpmath");
  });
});
