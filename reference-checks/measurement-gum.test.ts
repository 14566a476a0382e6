import {
  combineUncertainties,
  describeInput,
  expandUncertainty,
  meanOfCorrelated,
  type Propagation,
  propagateDistributions,
  propagateUncertainty,
  type Simulation,
  validatePropagation,
} from "@tapewise/measurement";
import { normalQuantile } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import {
  COMPARISON_DEGREES,
  calibration,
  comparisonLoss,
  days,
  endGauge,
  impedance,
  logarithm,
  mass,
  sums,
  typeB,
} from "./measurement-gum-figures.ts";
import { type Against, against } from "./table/against.ts";

/** As a figure is printed: with as many decimals as the publication has. */
const asPrinted = (value: number, printed: string) => value.toFixed(printed.split(".")[1]?.length ?? 0);
const recomputed = (name: string): Against =>
  against({
    of: `measurement.${name}`,
    source: "GUM (JCGM 100:2008), clauses 4, G and H; JCGM 101:2008, 9; NPL DEM-ES-011",
    origin: "recomputed with mpmath 1.3 and SciPy 1.17",
    why: "slopes are differences, and a simulation scatters; each as its test says",
  });
const expectClose = (
  value: number | undefined,
  wanted: string,
  relative = 1e-10,
  name = "propagateUncertainty",
) => recomputed(name).relative(value, wanted, relative);
const asItIsPrinted = (value: number, wanted: string, name = "propagateUncertainty") =>
  against({
    of: `measurement.${name}`,
    source: "GUM (JCGM 100:2008), clauses 4, G and H; JCGM 101:2008, 9; NPL DEM-ES-011",
    origin: "printed (from memory)",
    why: "the decimals that are printed",
  }).printed(value, wanted);

/** A simulated mean may be off by five of its standard errors, which is once in two million. */
function expectSimulatedMean({ value, uncertainty, trials }: Simulation, exact: number): void {
  expect(Math.abs(value - exact)).toBeLessThan((5 * uncertainty) / Math.sqrt(trials));
}

/** The share of values below a simulated end of 95 % may be off by five standard errors of a share. */
const TAIL = 0.025;
const tailError = (trials: number) => 5 * Math.sqrt((TAIL * (1 - TAIL)) / trials);

describe("type B evaluation (GUM 4.3)", () => {
  test.each(typeB)("$clause", ({ distribution, printed, recomputed: wanted }) => {
    const { uncertainty } = describeInput(distribution);
    asItIsPrinted(uncertainty, printed, "describeInput");
    expectClose(uncertainty, wanted, 1e-10, "describeInput");
  });

  test("240 µg stated as three standard deviations are 80 µg (4.3.4)", () => {
    // P(|Z| < 3) = 0.99730020393673979, recomputed with mpmath 1.3.
    const { expanded } = expandUncertainty(
      { value: 0, uncertainty: 80, degreesOfFreedom: Number.POSITIVE_INFINITY },
      0.9973002039367398,
    );
    expect(Math.abs(expanded - 240)).toBeLessThan(1e-9);
  });

  test("10.07 to 10.15 mm in half of the cases: u = 1.48 a, printed 0.06 mm (4.3.5)", () => {
    // 0.059304088740224074422, recomputed with mpmath 1.3.
    const uncertainty = 0.04 / normalQuantile(0.75);
    expect(asPrinted(uncertainty, "0.06")).toBe("0.06");
    expectClose(uncertainty, "0.059304088740224074422", 1e-14);
    const { lower, upper } = expandUncertainty(
      { value: 10.11, uncertainty, degreesOfFreedom: Number.POSITIVE_INFINITY },
      0.5,
    );
    expect([asPrinted(lower, "10.07"), asPrinted(upper, "10.15")]).toEqual(["10.07", "10.15"]);
  });

  test("two relative uncertainties of 9 and infinitely many degrees: 12.8 (an exercise of ENGR 224)", () => {
    const { degreesOfFreedom } = combineUncertainties([
      { uncertainty: 0.57, degreesOfFreedom: 9 },
      { uncertainty: 0.25, degreesOfFreedom: Number.POSITIVE_INFINITY },
    ]);
    asItIsPrinted(degreesOfFreedom, "12.8", "combineUncertainties");
    expectClose(degreesOfFreedom, "12.7956490341371", 1e-12, "combineUncertainties");
  });

  test("a product of three, u = 1.03 %, U = 2.2 % (G.4.1)", () => {
    const product = propagateUncertainty({
      inputs: [
        { name: "x1", value: 1, uncertainty: 0.0025, degreesOfFreedom: 9 },
        { name: "x2", value: 1, uncertainty: 0.0057, degreesOfFreedom: 4 },
        { name: "x3", value: 1, uncertainty: 0.0082, degreesOfFreedom: 14 },
      ],
      model: (x) => Number(x[0]) * Number(x[1]) * Number(x[2]),
    });
    expectClose(product.uncertainty, "0.010294658809304949471", 1e-12);
    expectClose(product.degreesOfFreedom, "18.998742314267953119", 1e-11);
    const whole = Math.floor(product.degreesOfFreedom);
    const { expanded, factor } = expandUncertainty({ ...product, degreesOfFreedom: whole }, 0.95);
    expectClose(factor, "2.1009220402410384881", 1e-13, "expandUncertainty");
    expect(asPrinted(100 * expanded, "2.2")).toBe("2.2");
  });
});

describe("the end gauge (GUM H.1)", () => {
  const inputs = endGauge.inputs.map((input) =>
    input.name === "comparison" ? { ...input, degreesOfFreedom: COMPARISON_DEGREES } : input,
  );
  const model = (x: ArrayLike<number>) => {
    const [standard, comparison, temperature, expansion, difference, apart] = Array.from(x) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    return standard + comparison - standard * (difference * temperature + expansion * apart);
  };
  const { printed, recomputed } = endGauge;
  const first = propagateUncertainty({ inputs, model });
  const second = propagateUncertainty({ inputs, model, secondOrder: true });
  const lineOf = (result: Propagation, name: string) => result.lines.find((line) => line.name === name);

  test("first order", () => {
    asItIsPrinted(first.value, printed.value ?? "");
    asItIsPrinted(first.uncertainty, printed.uncertainty ?? "");
    // Differences of values near 5e7 are good to about 1e-8 of them over the step; that is 1e-7 of the result.
    expectClose(first.uncertainty, recomputed.uncertainty ?? "", 1e-7);
    expectClose(
      lineOf(first, "expansion difference")?.contribution,
      recomputed.expansionDifference ?? "",
      1e-6,
    );
    expectClose(
      lineOf(first, "temperature difference")?.contribution,
      recomputed.temperatureDifference ?? "",
      1e-6,
    );
    expectClose(first.degreesOfFreedom, recomputed.degreesOfFreedom ?? "", 1e-6);
  });

  test("expanded at 99 % with 16 degrees of freedom: printed 93 nm, which is 2.92 times the rounded 32", () => {
    const { factor, expanded } = expandUncertainty({ ...first, degreesOfFreedom: 16 }, 0.99);
    asItIsPrinted(factor, printed.factor99 ?? "", "expandUncertainty");
    expectClose(factor, recomputed.factor99At16 ?? "", 1e-13, "expandUncertainty");
    expect(Math.abs(expanded - Number(printed.expanded99))).toBeLessThan(1);
  });

  test("second order: 11.7 and 1.7 nm more, 34 nm in all", () => {
    expect(asPrinted(second.uncertainty, "34")).toBe(printed.secondOrder);
    expectClose(second.uncertainty, recomputed.secondOrder ?? "", 1e-6);
    const one = Number(recomputed.secondOrderOne);
    const other = Number(recomputed.secondOrderOther);
    // Beside the two printed terms there is −θ u(l) u(δα), 1e-6 nm. Differences of third order magnify the rounding of
    // values near 5e7, 4e-9, by 8 · 256, and a slope of 25 nm multiplies it: 2e-4 a term, and there are a few.
    expect(Math.abs((second.secondOrder?.variance ?? 0) - one ** 2 - other ** 2)).toBeLessThan(1e-3);
  });

  test("simulated: the terms of second order are all that first order leaves out", () => {
    const simulation = propagateDistributions({
      inputs: inputs.map(({ name, value, uncertainty }) => ({
        name,
        distribution: { shape: "normal", mean: value, sd: uncertainty },
      })),
      model,
      seed: 1,
      trials: 200_000,
    });
    expectSimulatedMean(simulation, Number(recomputed.value));
    // A product of normal quantities has a kurtosis of 9 at most: the standard error of an sd is below u √(8/4N).
    const allowed = 5 * Number(recomputed.secondOrder) * Math.sqrt(2 / simulation.trials);
    expect(Math.abs(simulation.uncertainty - Number(recomputed.secondOrder))).toBeLessThan(allowed);
    expect(asPrinted(simulation.uncertainty, "34")).toBe("34");
  });
});

describe("correlated inputs", () => {
  const columns = [impedance.volts, impedance.milliamperes, impedance.radians].map((column) =>
    column.map(Number),
  );
  const meanOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const means = columns.map(meanOf);
  const covariance = (i: number, j: number) =>
    (columns[i] ?? []).reduce(
      (sum, value, k) =>
        sum + (value - (means[i] ?? 0)) * ((columns[j]?.[k] ?? Number.NaN) - (means[j] ?? 0)),
      0,
    ) / 20;
  const names = ["volts", "milliamperes", "radians"] as const;
  const inputs = names.map((name, i) => ({
    name,
    value: means[i] ?? Number.NaN,
    uncertainty: Math.sqrt(covariance(i, i)),
    degreesOfFreedom: 4,
  }));
  const pairs = [
    [0, 1],
    [0, 2],
    [1, 2],
  ] as const;
  const correlations = pairs.map(([i, j]) => ({
    between: [names[i], names[j]] as const,
    coefficient: covariance(i, j) / Math.sqrt(covariance(i, i) * covariance(j, j)),
  }));

  test("the uncertainties and correlations of Table H.3", () => {
    const { printed, recomputed } = impedance;
    inputs.forEach(({ uncertainty }, i) => {
      const text = printed.uncertainties[i] ?? "";
      expect(asPrinted(uncertainty, text)).toBe(text);
    });
    correlations.forEach(({ coefficient }, i) => {
      const text = printed.correlations[i] ?? "";
      expect(asPrinted(coefficient, text)).toBe(text);
      expectClose(coefficient, recomputed.correlations[i] ?? "", 1e-8);
    });
  });

  test.each([
    ["resistance", (v: number, i: number, p: number) => (v / (i / 1000)) * Math.cos(p)],
    ["reactance", (v: number, i: number, p: number) => (v / (i / 1000)) * Math.sin(p)],
    ["impedance", (v: number, i: number) => v / (i / 1000)],
  ] as const)("%s (GUM H.2, Table H.4)", (name, formula) => {
    const model = (x: ArrayLike<number>) => formula(Number(x[0]), Number(x[1]), Number(x[2]));
    const result = propagateUncertainty({ inputs, model, correlations });
    const [value, uncertainty] = impedance.recomputed[name];
    expectClose(result.value, value, 1e-12);
    expectClose(result.uncertainty, uncertainty, 1e-8);
    const [printedValue, printedUncertainty] = impedance.printed[name];
    asItIsPrinted(result.value, printedValue);
    // The reactance is printed 0.295 from rounded figures; unrounded it is 0.2956.
    expect(Math.abs(result.uncertainty - Number(printedUncertainty))).toBeLessThan(0.0007);
    expect(result.degreesOfFreedom).toBeCloseTo(4, 12);

    const simulation = propagateDistributions({
      inputs: inputs.map((input) => ({
        name: input.name,
        distribution: { shape: "normal", mean: input.value, sd: input.uncertainty },
      })),
      model,
      correlations,
      seed: 2,
    });
    const known = { ...result, degreesOfFreedom: Number.POSITIVE_INFINITY };
    expect(validatePropagation(known, simulation, 1).isValid).toBe(true);
  });

  test("a fitted line read at 30 °C (GUM H.3)", () => {
    const [intercept, slope] = [calibration.intercept, calibration.slope];
    const result = propagateUncertainty({
      inputs: [
        { name: "y1", value: Number(intercept[0]), uncertainty: Number(intercept[1]) },
        { name: "y2", value: Number(slope[0]), uncertainty: Number(slope[1]) },
      ],
      model: (y) => Number(y[0]) + Number(y[1]) * (30 - 20),
      correlations: [{ between: ["y1", "y2"], coefficient: Number(calibration.correlation) }],
    });
    const { printed, recomputed } = calibration;
    asItIsPrinted(result.value, printed.value);
    asItIsPrinted(result.uncertainty, printed.uncertainty);
    expectClose(result.value, recomputed.value, 1e-12);
    expectClose(result.uncertainty, recomputed.uncertainty, 1e-10);
  });

  test("readings of one day share that day (GUM H.5)", () => {
    const [between, within] = [Number(days.between), Number(days.within)];
    const one = Math.hypot(between, within);
    const ofDay = meanOfCorrelated([0, 0, 0, 0, 0], one, (between / one) ** 2).uncertaintyMm;
    expectClose(ofDay, days.recomputed.ofDayMeans, 1e-12, "meanOfCorrelated");
    asItIsPrinted(ofDay, days.printed.ofDayMeans, "meanOfCorrelated");
    const ofMean = meanOfCorrelated(new Array<number>(10).fill(0), ofDay, 0).uncertaintyMm;
    expectClose(ofMean, days.recomputed.ofMean, 1e-12, "meanOfCorrelated");
    asItIsPrinted(ofMean, days.printed.ofMean, "meanOfCorrelated");
  });
});

describe("sums of four (JCGM 101, 9.2)", () => {
  test.each(sums)("$clause, $shape, deviations $sds", ({ shape, sds, printed, exact }) => {
    const model = (x: ArrayLike<number>) => Number(x[0]) + Number(x[1]) + Number(x[2]) + Number(x[3]);
    const simulation = propagateDistributions({
      inputs: sds.map((sd, i) => ({
        name: `x${i}`,
        distribution:
          shape === "normal"
            ? { shape, mean: 0, sd }
            : { shape, lower: -sd * Math.sqrt(3), upper: sd * Math.sqrt(3) },
      })),
      model,
      seed: 3,
      trials: 200_000,
    });
    expectSimulatedMean(simulation, 0);
    const uncertainty = Math.hypot(...sds);
    expectClose(
      simulation.uncertainty,
      String(uncertainty),
      5 * Math.sqrt(1 / simulation.trials),
      "propagateDistributions",
    );
    const { lower, upper } = simulation.symmetric;
    // The density at the ends is above 0.02/u for each of the three, so a tail of ±5 errors is this wide.
    const allowed = (tailError(simulation.trials) / 0.02) * uncertainty;
    expect(Math.abs(upper - Number(exact))).toBeLessThan(allowed);
    expect(Math.abs(lower + Number(exact))).toBeLessThan(allowed);
    expect(Math.abs(Number(exact) - Number(printed))).toBeLessThan(0.02);

    const propagated = propagateUncertainty({
      inputs: sds.map((sd, i) => ({ name: `x${i}`, value: 0, uncertainty: sd })),
      model,
    });
    expectClose(propagated.uncertainty, String(uncertainty), 1e-12);
    // The document finds the law of propagation good for the first, to two digits of u, and not for the last.
    const validation = validatePropagation(propagated, simulation, 2);
    expect(validation.tolerance).toBe(shape === "normal" || sds[3] === 1 ? 0.05 : 0.5);
    against({
      of: "measurement.validatePropagation",
      source: "JCGM 101:2008, 8.1 and 9.2",
      origin: "printed (from memory)",
      why: "valid or not",
    }).same(validation.isValid, sds[3] !== 10);
  });
});

describe("calibration of a mass (JCGM 101, 9.3)", () => {
  const model = (x: ArrayLike<number>) => {
    const [reference, added, air, weight, standard] = Array.from(x) as [
      number,
      number,
      number,
      number,
      number,
    ];
    // Less the nominal mass before the small part is added, so that no digits are lost.
    const whole = reference + added;
    return whole - 100000 + whole * (air - 1.2) * (1 / weight - 1 / standard);
  };
  const inputs = mass.inputs.map(({ name, distribution }) => {
    const { mean, uncertainty } = describeInput(distribution);
    return { name, value: mean, uncertainty };
  });
  const first = propagateUncertainty({ inputs, model });
  const second = propagateUncertainty({ inputs, model, secondOrder: true });
  const simulation = propagateDistributions({ inputs: mass.inputs, model, seed: 4, trials: 200_000 });
  const { printed, exact } = mass;

  test.each([
    ["first order", first, printed.firstOrder],
    ["second order", second, printed.secondOrder],
  ] as const)("law of propagation, %s", (_, result, figures) => {
    asItIsPrinted(result.value, "1.2340");
    asItIsPrinted(result.uncertainty, figures.uncertainty);
    const { lower, upper } = expandUncertainty(result, 0.95);
    // Printed from rounded figures.
    expect(Math.abs(lower - Number(figures.lower))).toBeLessThan(0.0002);
    expect(Math.abs(upper - Number(figures.upper))).toBeLessThan(0.0002);
  });

  test("Monte Carlo against the exact distribution", () => {
    expectSimulatedMean(simulation, Number(exact.value));
    expectClose(
      simulation.uncertainty,
      exact.uncertainty,
      5 / Math.sqrt(simulation.trials),
      "propagateDistributions",
    );
    // The density at the ends is above 0.03/u.
    const allowed = (tailError(simulation.trials) / 0.03) * Number(exact.uncertainty);
    expect(Math.abs(simulation.symmetric.lower - Number(exact.lower))).toBeLessThan(allowed);
    expect(Math.abs(simulation.symmetric.upper - Number(exact.upper))).toBeLessThan(allowed);
    // The document's own simulation was stopped at a tolerance of a fifth of 0.005.
    expect(Math.abs(Number(printed.simulated.lower) - Number(exact.lower))).toBeLessThan(0.0015);
    expect(Math.abs(Number(printed.simulated.upper) - Number(exact.upper))).toBeLessThan(0.0015);
  });

  test("first order fails the validation, second order passes it", () => {
    const failed = validatePropagation(first, simulation, 1);
    expect(failed.tolerance).toBe(Number(printed.tolerance));
    expect(failed.isValid).toBe(false);
    expect(Math.abs(failed.lowerDifference - Number(printed.differences[0]))).toBeLessThan(0.002);
    expect(Math.abs(failed.upperDifference - Number(printed.differences[1]))).toBeLessThan(0.002);
    expect(validatePropagation(second, simulation, 1).isValid).toBe(true);
  });
});

describe("comparison loss of a microwave power meter (JCGM 101, 9.4)", () => {
  test.each(comparisonLoss)(
    "x1 = $x1, correlation $correlation",
    ({ x1, correlation, propagated, printed, exact }) => {
      const model = (x: ArrayLike<number>) => 1e6 * (Number(x[0]) ** 2 + Number(x[1]) ** 2);
      const correlations = [{ between: ["x1", "x2"] as const, coefficient: correlation }];
      const simulation = propagateDistributions({
        inputs: [
          { name: "x1", distribution: { shape: "normal", mean: x1, sd: 0.005 } },
          { name: "x2", distribution: { shape: "normal", mean: 0, sd: 0.005 } },
        ],
        model,
        correlations,
        seed: 5,
        trials: 200_000,
      });
      expectSimulatedMean(simulation, exact.value);
      // The kurtosis is that of a chi-square with one degree of freedom, 15, at most: se of an sd ≤ u √(14/4N).
      expectClose(
        simulation.uncertainty,
        exact.uncertainty,
        5 * Math.sqrt(3.5 / simulation.trials),
        "propagateDistributions",
      );
      const [low, high] = exact.tails.map(Number) as [number, number];
      // Held in probability: near 0 the density is steep, at the upper end it is above 0.012/u.
      const allowed = (tailError(simulation.trials) / 0.012) * Number(exact.uncertainty);
      expect(Math.abs(simulation.symmetric.upper - high)).toBeLessThan(allowed);
      expect(Math.abs(simulation.symmetric.lower - low)).toBeLessThan(allowed);
      const [from, to] = exact.short.map(Number) as [number, number];
      // Intervals that hold 95 % and are nearly as short lie well to either side: a tenth of u.
      const tenth = Number(exact.uncertainty) / 10;
      expect(Math.abs(simulation.shortest.lower - from)).toBeLessThan(tenth);
      expect(Math.abs(simulation.shortest.upper - to)).toBeLessThan(tenth);
      const width = simulation.shortest.upper - simulation.shortest.lower;
      expect(Math.abs(width - (to - from))).toBeLessThan(2 * allowed);

      if (propagated === undefined || printed === undefined) return;
      // The published simulation scatters by one or so in its last digit.
      expect(Math.abs(Number(printed.value) - exact.value)).toBeLessThanOrEqual(1);
      expect(asPrinted(Number(exact.uncertainty), "112")).toBe(printed.uncertainty);
      const inputs = [
        { name: "x1", value: x1, uncertainty: 0.005 },
        { name: "x2", value: 0, uncertainty: 0.005 },
      ];
      const first = propagateUncertainty({ inputs, model });
      asItIsPrinted(first.value, propagated.value);
      asItIsPrinted(first.uncertainty, propagated.uncertainty);
      // For a sum of squares of normal quantities the terms of second order are the exact variance and shift.
      const second = propagateUncertainty({ inputs, model, secondOrder: true });
      expectClose(second.uncertainty, exact.uncertainty, 1e-9);
      expectClose(second.secondOrder?.shift, "50", 1e-9);
    },
  );
});

describe("ln X of a rectangular X (NPL DEM-ES-011, 9.2)", () => {
  const model = (x: ArrayLike<number>) => Math.log(Number(x[0]));
  const x = { shape: "rectangular", lower: 0.1, upper: 1.1 } as const;
  const { mean, uncertainty } = describeInput(x);

  test("law of propagation", () => {
    const first = propagateUncertainty({ inputs: [{ name: "x", value: mean, uncertainty }], model });
    asItIsPrinted(first.value, logarithm.propagated.value);
    asItIsPrinted(first.uncertainty, logarithm.propagated.uncertainty);
    expectClose(first.value, logarithm.propagatedExactly.value, 1e-13);
    // The slope is a difference over u/16 and u/8: 4 h⁴ f⁽⁵⁾/5! with f⁽⁵⁾ = 24/x⁵ is 6e-6 of it.
    expectClose(first.uncertainty, logarithm.propagatedExactly.uncertainty, 1e-5);
  });

  test("Monte Carlo", () => {
    const simulation = propagateDistributions({
      inputs: [{ name: "x", distribution: x }],
      model,
      seed: 6,
      trials: 200_000,
    });
    const { exact, simulated } = logarithm;
    expectSimulatedMean(simulation, Number(exact.value));
    expectClose(
      simulation.uncertainty,
      exact.uncertainty,
      5 / Math.sqrt(simulation.trials),
      "propagateDistributions",
    );
    const error = tailError(simulation.trials);
    // The distribution function e^y − 0.1 tells what share lies beyond each end.
    expect(Math.abs(Math.exp(simulation.symmetric.lower) - 0.1 - TAIL)).toBeLessThan(error);
    expect(Math.abs(Math.exp(simulation.symmetric.upper) - 0.1 - (1 - TAIL))).toBeLessThan(error);
    expect(Math.abs(simulation.symmetric.lower - Number(exact.tails[0]))).toBeLessThan(0.01);
    expect(Math.abs(Math.exp(simulation.shortest.lower) - 0.15)).toBeLessThan(2 * error);
    expect(Math.abs(simulation.shortest.upper - Number(exact.short[1]))).toBeLessThan(1e-3);
    expect(Math.abs(simulation.shortest.lower - Number(simulated.lower))).toBeLessThan(0.015);
    expect(asPrinted(Number(exact.value), "-0.665")).toBe(simulated.value);
    expect(asPrinted(Number(exact.uncertainty), "0.606")).toBe(simulated.uncertainty);
  });
});
