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

/** As a figure is printed: with as many decimals as the publication has. */
const asPrinted = (value: number, printed: string) => value.toFixed(printed.split(".")[1]?.length ?? 0);
const componentsOf = (rows: readonly (readonly [string, number])[]) =>
  rows.map(([uncertainty, degreesOfFreedom]) => ({ uncertainty: Number(uncertainty), degreesOfFreedom }));

describe("type A evaluation (GUM 4.4.3)", () => {
  // The temperatures of the document, taken for millimetres.
  const readings = typeA.values.map((value) => parseLength(`${value} mm`));
  const estimate = parseEstimate({ dimension: "shoulder-length", readings });

  test("mean and experimental standard deviation", () => {
    expect(asPrinted(estimate.mm, typeA.printed.mean)).toBe(typeA.printed.mean);
    expect(asPrinted(estimate.spread.sampleMm ?? 0, typeA.printed.sd)).toBe(typeA.printed.sd);
    expect(estimate.spread.sampleMm).toBeCloseTo(Number(typeA.recomputed.sd), 12);
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
    expect(uncertainty).toBeCloseTo(Number(typeA.recomputed.sdOfMean), 12);
    expect(degreesOfFreedom).toBe(19);
  });
});

describe("effective degrees of freedom", () => {
  test("of three relative uncertainties (GUM G.4.1)", () => {
    const combined = combineUncertainties(componentsOf(welchSatterthwaite.components));
    const { printed, recomputed } = welchSatterthwaite;
    expect(asPrinted(combined.uncertainty, printed.combined)).toBe(printed.combined);
    expect(asPrinted(combined.degreesOfFreedom, printed.degreesOfFreedom)).toBe(printed.degreesOfFreedom);
    expect(combined.uncertainty).toBeCloseTo(Number(recomputed.combined), 12);
    expect(combined.degreesOfFreedom).toBeCloseTo(Number(recomputed.degreesOfFreedom), 10);
    expect(Math.floor(combined.degreesOfFreedom)).toBe(18);
  });

  test("of the end gauge (GUM H.1)", () => {
    const comparison = combineUncertainties(componentsOf(endGauge.comparison));
    expect(asPrinted(comparison.uncertainty, endGauge.comparisonPrinted.combined)).toBe(
      endGauge.comparisonPrinted.combined,
    );
    expect(comparison.uncertainty).toBeCloseTo(Number(endGauge.comparisonRecomputed.combined), 11);
    expect(comparison.degreesOfFreedom).toBeCloseTo(
      Number(endGauge.comparisonRecomputed.degreesOfFreedom),
      10,
    );
    // The document takes the rounded 9.7: 9.7⁴ over the same sum is 25.6.
    const rounded = comparison.degreesOfFreedom * (9.7 / comparison.uncertainty) ** 4;
    expect(asPrinted(rounded, "25.6")).toBe(endGauge.comparisonPrinted.degreesOfFreedom);

    const all = combineUncertainties([comparison, ...componentsOf(endGauge.others)]);
    expect(asPrinted(all.uncertainty, endGauge.printed.combined)).toBe(endGauge.printed.combined);
    expect(all.uncertainty).toBeCloseTo(Number(endGauge.recomputed.combined), 10);
    expect(all.degreesOfFreedom).toBeCloseTo(Number(endGauge.recomputed.degreesOfFreedom), 9);
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
    expect(line?.uncertaintyMm).toBeCloseTo(Number(recomputed), 12);
    expect(asPrinted(line?.uncertaintyMm ?? 0, printed)).toBe(printed);
  });

  test.each(rectangular.resolution)("a resolution of %s (GUM F.2.2.1)", (step, uncertainty) => {
    const reading = parseLength(step);
    const estimate = parseEstimate({ dimension: "torso-length", readings: [reading] });
    const line = estimate.budget.find(({ source }) => source === "resolution");
    expect(line?.uncertaintyMm).toBeCloseTo(Number(uncertainty), 13);
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
    expect(coverage.upperMm - mm).toBeCloseTo(Number(additive.recomputed.halfWidth), 11);
    expect(asPrinted(mm - coverage.lowerMm, additive.printed.halfWidth)).toBe(additive.printed.halfWidth);
  });
});

describe("Grubbs' test", () => {
  test.each(grubbs)("critical values of $n, computed", ({ n, five, one }) => {
    expect(Math.abs(grubbsCriticalValue(n, 0.05) - Number(five))).toBeLessThan(1e-10);
    expect(Math.abs(grubbsCriticalValue(n, 0.01) - Number(one))).toBeLessThan(1e-10);
  });

  test.each(grubbs.filter((row) => row.printedFive !== undefined))(
    "critical values of $n, printed",
    ({ n, printedFive, printedOne }) => {
      expect(Math.abs(grubbsCriticalValue(n, 0.05) - Number(printedFive))).toBeLessThan(0.0015);
      expect(Math.abs(grubbsCriticalValue(n, 0.01) - Number(printedOne))).toBeLessThan(0.0015);
    },
  );

  test.each(outliers)(
    "$name",
    ({ values, index, printed, recomputed, oneSided, isOutlierAtFive, isOutlierAtOne }) => {
      const list = values.map(Number);
      const found = grubbsTest(list, 0.1);
      expect(found.index).toBe(index);
      expect(asPrinted(found.statistic, printed)).toBe(printed);
      expect(Math.abs(found.statistic - Number(recomputed))).toBeLessThan(1e-12);
      expect(Math.abs(found.critical - Number(oneSided.five))).toBeLessThan(1e-10);
      expect(Math.abs(grubbsTest(list, 0.02).critical - Number(oneSided.one))).toBeLessThan(1e-10);
      expect(found.isOutlier).toBe(isOutlierAtFive);
      expect(grubbsTest(list, 0.02).isOutlier).toBe(isOutlierAtOne);
    },
  );
});

test.each(roundingCorrelations)(
  "rounding errors of readings that scatter by %s steps",
  (scatter, correlation) => {
    // An absolute error of a few units in the last place of 1.
    expect(Math.abs(roundingCorrelation(Number(scatter), 1) - Number(correlation))).toBeLessThan(4e-16);
  },
);
