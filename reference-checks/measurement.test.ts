import {
  combineUncertainties,
  errorDefaults,
  grubbsCriticalValue,
  grubbsTest,
  parseEstimate,
  poolSpread,
  roundingCorrelation,
} from "@tapewise/measurement";
import { parseLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import {
  additive,
  endGauge,
  grubbs,
  outliers,
  rectangular,
  roundingCorrelations,
  typeA,
  welchSatterthwaite,
} from "./measurement-figures.ts";
import { type Against, against } from "./table/against.ts";

/** As a figure is printed: with as many decimals as the publication has. */
const asPrinted = (value: number, printed: string) => value.toFixed(printed.split(".")[1]?.length ?? 0);
const gum = (name: string): Against =>
  against({
    of: `measurement.${name}`,
    source: "GUM (JCGM 100:2008), 4.3.7, 4.4.3, F.2.2.1, G.4.1, H.1; JCGM 101:2008, 9.2.2",
    origin: "recomputed with mpmath 1.3",
    why: "tens of roundings",
  });
const componentsOf = (rows: readonly (readonly [string, number])[]) =>
  rows.map(([uncertainty, degreesOfFreedom]) => ({ uncertainty: Number(uncertainty), degreesOfFreedom }));

describe("type A evaluation (GUM 4.4.3)", () => {
  // The temperatures of the document, taken for millimetres.
  const readings = typeA.values.map((value) => parseLength(`${value} mm`));
  const estimate = parseEstimate({ dimension: "shoulder-length", readings });

  test("mean and experimental standard deviation", () => {
    expect(asPrinted(estimate.mm, typeA.printed.mean)).toBe(typeA.printed.mean);
    expect(asPrinted(estimate.spread.sampleMm ?? 0, typeA.printed.sd)).toBe(typeA.printed.sd);
    gum("parseEstimate").absolute(estimate.spread.sampleMm, Number(typeA.recomputed.sd), 0.5e-12);
  });

  test("standard deviation of the mean, where nothing is known of the method", () => {
    const variance = (estimate.spread.sampleMm ?? 0) ** 2;
    const pooled = poolSpread({ variance: 0, degreesOfFreedom: 0 }, { variance, degreesOfFreedom: 19 });
    const { uncertainty, degreesOfFreedom } = combineUncertainties([
      {
        uncertainty: Math.sqrt(pooled.variance / readings.length),
        degreesOfFreedom: pooled.degreesOfFreedom,
      },
    ]);
    expect(asPrinted(uncertainty, typeA.printed.sdOfMean)).toBe(typeA.printed.sdOfMean);
    gum("poolSpread").absolute(uncertainty, Number(typeA.recomputed.sdOfMean), 0.5e-12);
    expect(degreesOfFreedom).toBe(19);
  });
});

describe("effective degrees of freedom", () => {
  test("of three relative uncertainties (GUM G.4.1)", () => {
    const combined = combineUncertainties(componentsOf(welchSatterthwaite.components));
    const { printed, recomputed } = welchSatterthwaite;
    expect(asPrinted(combined.uncertainty, printed.combined)).toBe(printed.combined);
    expect(asPrinted(combined.degreesOfFreedom, printed.degreesOfFreedom)).toBe(printed.degreesOfFreedom);
    gum("combineUncertainties").absolute(combined.uncertainty, Number(recomputed.combined), 0.5e-12);
    gum("combineUncertainties").absolute(
      combined.degreesOfFreedom,
      Number(recomputed.degreesOfFreedom),
      0.5e-10,
    );
    expect(Math.floor(combined.degreesOfFreedom)).toBe(18);
  });

  test("of the end gauge (GUM H.1)", () => {
    const comparison = combineUncertainties(componentsOf(endGauge.comparison));
    expect(asPrinted(comparison.uncertainty, endGauge.comparisonPrinted.combined)).toBe(
      endGauge.comparisonPrinted.combined,
    );
    gum("combineUncertainties").absolute(
      comparison.uncertainty,
      Number(endGauge.comparisonRecomputed.combined),
      0.5e-11,
    );
    gum("combineUncertainties").absolute(
      comparison.degreesOfFreedom,
      Number(endGauge.comparisonRecomputed.degreesOfFreedom),
      0.5e-10,
    );
    // The document takes the rounded 9.7: 9.7⁴ over the same sum is 25.6.
    const rounded = comparison.degreesOfFreedom * (9.7 / comparison.uncertainty) ** 4;
    expect(asPrinted(rounded, "25.6")).toBe(endGauge.comparisonPrinted.degreesOfFreedom);

    const all = combineUncertainties([comparison, ...componentsOf(endGauge.others)]);
    expect(asPrinted(all.uncertainty, endGauge.printed.combined)).toBe(endGauge.printed.combined);
    gum("combineUncertainties").absolute(all.uncertainty, Number(endGauge.recomputed.combined), 0.5e-10);
    gum("combineUncertainties").absolute(
      all.degreesOfFreedom,
      Number(endGauge.recomputed.degreesOfFreedom),
      0.5e-9,
    );
    // Printed 16.7, cut and not rounded from 16.75.
    expect(Math.floor(all.degreesOfFreedom * 10) / 10).toBe(Number(endGauge.printed.degreesOfFreedom));
  });
});

describe("type B evaluation", () => {
  test("a tape that may be wrong by 4 mm in a metre is rectangular (GUM 4.3.7, 4.4.5)", () => {
    const tape = { scaleHalfWidth: 0.004, transferMm: 0, jointMm: 0 };
    const estimate = parseEstimate({
      dimension: "hip-girth",
      readings: [parseLength("1000 mm")],
      defaults: { ...errorDefaults, tools: { ...errorDefaults.tools, tape } },
    });
    const line = estimate.budget.find(({ source }) => source === "tool-scale");
    const { printed, recomputed } = rectangular.halfWidthFour;
    gum("parseEstimate").absolute(line?.uncertaintyMm, Number(recomputed), 0.5e-12);
    expect(asPrinted(line?.uncertaintyMm ?? 0, printed)).toBe(printed);
  });

  test.each(rectangular.resolution)("a resolution of %s (GUM F.2.2.1)", (step, uncertainty) => {
    const reading = parseLength(step);
    const estimate = parseEstimate({ dimension: "torso-length", readings: [reading] });
    const line = estimate.budget.find(({ source }) => source === "resolution");
    gum("parseEstimate").absolute(line?.uncertaintyMm, Number(uncertainty), 0.5e-13);
    expect(asPrinted((line?.uncertaintyMm ?? 0) / reading.mm, "0.29")).toBe("0.29");
  });

  test("a known standard uncertainty of 2 covers 95 % within ±3.92 (JCGM 101, 9.2.2)", () => {
    const one = { uncertainty: 1, degreesOfFreedom: Number.POSITIVE_INFINITY };
    const { uncertainty } = combineUncertainties([one, one, one, one]);
    expect(asPrinted(uncertainty, additive.printed.u)).toBe(additive.printed.u);
    const { mm, coverage } = parseEstimate({
      dimension: "torso-length",
      readings: [parseLength("430 mm")],
      error: { biasMm: uncertainty, repeatMm: 0, resolutionMm: 0 },
    });
    gum("parseEstimate").absolute(coverage.upperMm - mm, Number(additive.recomputed.halfWidth), 0.5e-11);
    expect(asPrinted(mm - coverage.lowerMm, additive.printed.halfWidth)).toBe(additive.printed.halfWidth);
  });
});

describe("Grubbs' test", () => {
  const grubbsFormula = (name: string): Against =>
    against({
      of: `measurement.${name}`,
      source: "Grubbs 1950 and 1969 by quantiles of t (NIST/SEMATECH e-Handbook 1.3.5.17.1)",
      origin: "recomputed with mpmath 1.3",
      why: "far quantiles of t",
    });
  const iso5725 = against({
    of: "measurement.grubbsCriticalValue",
    source: "ISO 5725-2:1994, Table 5",
    origin: "printed (from memory)",
    why: "printed values are off the formula by up to 0.0009",
  });
  test.each(grubbs)("critical values of $n, computed", ({ n, five, one }) => {
    grubbsFormula("grubbsCriticalValue").absolute(grubbsCriticalValue(n, 0.05), five, 1e-10);
    grubbsFormula("grubbsCriticalValue").absolute(grubbsCriticalValue(n, 0.01), one, 1e-10);
  });

  test.each(grubbs.filter((row) => row.printedFive !== undefined))(
    "critical values of $n, printed",
    ({ n, printedFive, printedOne }) => {
      iso5725.absolute(grubbsCriticalValue(n, 0.05), printedFive ?? "", 0.0015);
      iso5725.absolute(grubbsCriticalValue(n, 0.01), printedOne ?? "", 0.0015);
    },
  );

  test.each(outliers)(
    "$name",
    ({ values, index, printed, recomputed, oneSided, isOutlierAtFive, isOutlierAtOne }) => {
      const list = values.map(Number);
      const found = grubbsTest(list, 0.1);
      expect(found.index).toBe(index);
      against({
        of: "measurement.grubbsTest",
        source: "Grubbs 1969; Tietjen & Moore 1972",
        origin: "printed (from memory, second-hand)",
        why: "the decimals that are printed",
      }).printed(found.statistic, printed);
      grubbsFormula("grubbsTest").absolute(found.statistic, recomputed, 1e-12);
      grubbsFormula("grubbsTest").absolute(found.critical, oneSided.five, 1e-10);
      grubbsFormula("grubbsTest").absolute(grubbsTest(list, 0.02).critical, oneSided.one, 1e-10);
      expect(found.isOutlier).toBe(isOutlierAtFive);
      expect(grubbsTest(list, 0.02).isOutlier).toBe(isOutlierAtOne);
    },
  );
});

test.each(roundingCorrelations)(
  "rounding errors of readings that scatter by %s steps",
  (scatter, correlation) => {
    // An absolute error of a few units in the last place of 1.
    against({
      of: "measurement.roundingCorrelation",
      source: "the mean of 1 − 6u + 6u² over N(0, 2σ²)",
      origin: "recomputed with mpmath 1.3",
      why: "a few units in the last place of 1",
    }).absolute(roundingCorrelation(Number(scatter), 1), correlation, 4e-16);
  },
);
