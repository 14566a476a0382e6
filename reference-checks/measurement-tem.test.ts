import { cochranCriticalValue, parseStudy, safePrecision, safeTechnicalError } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import {
  cochran,
  cochranUnequal,
  incomplete,
  peakFlow,
  standardisation,
  stature,
} from "./measurement-tem-figures.ts";

const wide = (headers: string, rows: readonly (readonly (string | number)[])[]) =>
  parseStudy([`subject,${headers}`, ...rows.map((row, index) => `s${index},${row.join(",")}`)].join("\n"));
const technicalError = (headers: string, rows: readonly (readonly (string | number)[])[]) =>
  unwrap(safeTechnicalError(wide(headers, rows)));

describe("Ulijaszek & Kerr 1999: stature, ten children, four observers", () => {
  const { inter, intra, total } = technicalError("A (m),B (m),C (m),D (m)", stature.values);
  const { recomputed } = stature;

  test("error between observers, relative error and reliability", () => {
    expect(inter?.mm.value).toBeCloseTo(1000 * Number(recomputed.temMetres), 10);
    expect(inter?.meanMm).toBeCloseTo(1000 * Number(recomputed.meanMetres), 9);
    expect(inter?.relative.value).toBeCloseTo(Number(recomputed.percent), 12);
    expect(inter?.sdMm).toBeCloseTo(1000 * Number(recomputed.sdMetres), 10);
    expect(inter?.reliability).toBeCloseTo(Number(recomputed.reliability), 12);
    expect(inter?.degreesOfFreedom).toBe(30);
    expect(intra).toBeUndefined();
    expect(total).toEqual(inter);
  });

  test.each(stature.printed.differences.map((printed, index) => [index, printed] as const))(
    "the printed difference of child %i",
    (index, printed) => {
      const row = stature.values[index] ?? [];
      const child = technicalError("A (m),B (m),C (m),D (m)", [row]);
      // One child alone: TEM² in mm² times K − 1 = 3 is ΣM² − (ΣM)²/K; printed times 100 in m².
      const difference = ((child.inter?.mm.value ?? 0) ** 2 * 3 * 100) / 1e6;
      expect(difference.toFixed(4)).toBe(printed);
    },
  );
});

describe("standardisation test of the SMART Methodology: ten children read twice", () => {
  test("weights, taken for centimetres", () => {
    const { printed, recomputed, values } = standardisation.weights;
    const { intra } = technicalError("S1 (cm),S2 (cm)", values);
    expect(((intra?.mm.value ?? 0) / 10).toFixed(8)).toBe(printed.tem);
    expect((intra?.mm.value ?? 0) / 10).toBeCloseTo(Number(recomputed.tem), 13);
    expect(intra?.relative.value).toBeCloseTo(Number(recomputed.percent), 12);
    expect(intra?.reliability).toBeCloseTo(Number(recomputed.reliability), 12);
  });

  test("heights", () => {
    const { recomputed, values } = standardisation.heights;
    const { intra } = technicalError("S1 (cm),S2 (cm)", values);
    expect((intra?.mm.value ?? 0) / 10).toBeCloseTo(Number(recomputed.tem), 12);
    expect((intra?.sdMm ?? 0) / 10).toBeCloseTo(Number(recomputed.sd), 12);
    expect(intra?.relative.value).toBeCloseTo(Number(recomputed.percent), 12);
    expect(intra?.reliability).toBeCloseTo(Number(recomputed.reliability), 12);
  });
});

test("Bland & Altman 1986: peak flow read twice, within-subject standard deviation", () => {
  const rows = peakFlow.first.map((value, index) => [value, peakFlow.second[index] ?? 0]);
  const { intra } = technicalError("W1 (mm),W2 (mm)", rows);
  expect(intra?.mm.value).toBeCloseTo(Number(peakFlow.recomputed.within), 11);
  expect(intra?.relative.value).toBeCloseTo(Number(peakFlow.recomputed.percent), 11);
  expect(intra?.meanMm).toBeCloseTo(Number(peakFlow.recomputed.mean), 11);
  expect(intra?.sdMm).toBeCloseTo(Number(peakFlow.recomputed.sd), 11);
  expect(intra?.reliability).toBeCloseTo(Number(peakFlow.recomputed.reliability), 13);
});

describe("an incomplete study, against R", () => {
  const study = parseStudy(incomplete.text);
  const errors = unwrap(safeTechnicalError(study));

  test("within measurers", () => {
    const { value, lower, upper, df } = incomplete.intra;
    expect(errors.intra?.mm.value).toBeCloseTo(value, 11);
    expect(errors.intra?.mm.lower).toBeCloseTo(lower, 9);
    expect(errors.intra?.mm.upper).toBeCloseTo(upper, 9);
    expect(errors.intra?.degreesOfFreedom).toBe(df);
    for (const [index, [measurer, tem, degrees]] of incomplete.perMeasurer.entries()) {
      expect(errors.perMeasurer[index]?.measurer).toBe(measurer);
      expect(errors.perMeasurer[index]?.tem.mm.value).toBeCloseTo(Number(tem), 11);
      expect(errors.perMeasurer[index]?.tem.degreesOfFreedom).toBe(degrees);
    }
  });

  test("between measurers, and altogether", () => {
    expect(errors.inter?.mm.value).toBeCloseTo(incomplete.inter.value, 10);
    expect(errors.inter?.mm.lower).toBeCloseTo(incomplete.inter.lower, 8);
    expect(errors.inter?.mm.upper).toBeCloseTo(incomplete.inter.upper, 8);
    expect(errors.inter?.degreesOfFreedom).toBe(incomplete.inter.df);
    expect(errors.total?.mm.value).toBeCloseTo(incomplete.total.value, 10);
    expect(errors.total?.mm.lower).toBeCloseTo(incomplete.total.lower, 8);
    expect(errors.total?.mm.upper).toBeCloseTo(incomplete.total.upper, 8);
  });

  test("precision after ISO 5725-2", () => {
    const precision = unwrap(safePrecision(study));
    expect(precision.repeatability.value).toBeCloseTo(incomplete.precision.repeatability, 11);
    expect(precision.betweenMm).toBeCloseTo(incomplete.precision.between, 10);
    expect(precision.reproducibilityMm).toBeCloseTo(incomplete.precision.reproducibility, 10);
  });
});

describe("Cochran's critical values", () => {
  test.each(cochran)("$count variances of $df degrees of freedom at $significance", (row) => {
    const critical = cochranCriticalValue(row.count, row.df, row.count * row.df, row.significance);
    expect(critical).toBeCloseTo(row.recomputed, 11);
    // Printed tables round the last digit now and then.
    if (row.printed !== undefined) expect(Math.abs(critical - Number(row.printed))).toBeLessThan(0.00075);
  });

  test("unequal degrees of freedom", () => {
    const { count, df, total, significance, recomputed } = cochranUnequal;
    expect(cochranCriticalValue(count, df, total, significance)).toBeCloseTo(recomputed, 11);
  });
});
