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
import { type Against, against } from "./table/against.ts";

/** Within half a unit of a decimal place. */
function close(name: string, actual: number | undefined, expected: number | string, decimals: number): void {
  const source =
    SOURCES[name] ?? "Ulijaszek & Kerr 1999; SMART Methodology; Bland & Altman 1986; an invented study";
  against({
    of: `measurement.${name}`,
    source,
    origin: "recomputed with mpmath 1.3 and R 4.2.2",
    why: "tens of roundings of figures in mm",
  }).absolute(actual, expected, 0.5 * 10 ** -decimals);
}
const printedIn = (source: string): Against =>
  against({
    of: "measurement.safeTechnicalError",
    source,
    origin: "printed",
    why: "the decimals that are printed",
  });
const SOURCES: Readonly<Record<string, string>> = {
  safePrecision: "ISO 5725-2, an invented study with holes",
  cochranCriticalValue: "Cochran's test by F quantiles (ISO 5725-2)",
};

const wide = (headers: string, rows: readonly (readonly (string | number)[])[]) =>
  parseStudy([`subject,${headers}`, ...rows.map((row, index) => `s${index},${row.join(",")}`)].join("\n"));
const technicalError = (headers: string, rows: readonly (readonly (string | number)[])[]) =>
  unwrap(safeTechnicalError(wide(headers, rows)));

describe("Ulijaszek & Kerr 1999: stature, ten children, four observers", () => {
  const { inter, intra, total } = technicalError("A (m),B (m),C (m),D (m)", stature.values);
  const { recomputed } = stature;

  test("error between observers, relative error and reliability", () => {
    close("safeTechnicalError", inter?.mm.value, 1000 * Number(recomputed.temMetres), 10);
    close("safeTechnicalError", inter?.meanMm, 1000 * Number(recomputed.meanMetres), 9);
    close("safeTechnicalError", inter?.relative.value, Number(recomputed.percent), 12);
    close("safeTechnicalError", inter?.sdMm, 1000 * Number(recomputed.sdMetres), 10);
    close("safeTechnicalError", inter?.reliability, Number(recomputed.reliability), 12);
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
      printedIn("Ulijaszek & Kerr 1999").printed(difference, printed);
    },
  );
});

describe("standardisation test of the SMART Methodology: ten children read twice", () => {
  test("weights, taken for centimetres", () => {
    const { printed, recomputed, values } = standardisation.weights;
    const { intra } = technicalError("S1 (cm),S2 (cm)", values);
    printedIn("SMART Methodology, standardisation test").printed((intra?.mm.value ?? 0) / 10, printed.tem);
    close("safeTechnicalError", (intra?.mm.value ?? 0) / 10, Number(recomputed.tem), 13);
    close("safeTechnicalError", intra?.relative.value, Number(recomputed.percent), 12);
    close("safeTechnicalError", intra?.reliability, Number(recomputed.reliability), 12);
  });

  test("heights", () => {
    const { recomputed, values } = standardisation.heights;
    const { intra } = technicalError("S1 (cm),S2 (cm)", values);
    close("safeTechnicalError", (intra?.mm.value ?? 0) / 10, Number(recomputed.tem), 12);
    close("safeTechnicalError", (intra?.sdMm ?? 0) / 10, Number(recomputed.sd), 12);
    close("safeTechnicalError", intra?.relative.value, Number(recomputed.percent), 12);
    close("safeTechnicalError", intra?.reliability, Number(recomputed.reliability), 12);
  });
});

test("Bland & Altman 1986: peak flow read twice, within-subject standard deviation", () => {
  const rows = peakFlow.first.map((value, index) => [value, peakFlow.second[index] ?? 0]);
  const { intra } = technicalError("W1 (mm),W2 (mm)", rows);
  close("safeTechnicalError", intra?.mm.value, Number(peakFlow.recomputed.within), 11);
  close("safeTechnicalError", intra?.relative.value, Number(peakFlow.recomputed.percent), 11);
  close("safeTechnicalError", intra?.meanMm, Number(peakFlow.recomputed.mean), 11);
  close("safeTechnicalError", intra?.sdMm, Number(peakFlow.recomputed.sd), 11);
  close("safeTechnicalError", intra?.reliability, Number(peakFlow.recomputed.reliability), 13);
});

describe("an incomplete study, against R", () => {
  const study = parseStudy(incomplete.text);
  const errors = unwrap(safeTechnicalError(study));

  test("within measurers", () => {
    const { value, lower, upper, df } = incomplete.intra;
    close("safeTechnicalError", errors.intra?.mm.value, value, 11);
    close("safeTechnicalError", errors.intra?.mm.lower, lower, 9);
    close("safeTechnicalError", errors.intra?.mm.upper, upper, 9);
    expect(errors.intra?.degreesOfFreedom).toBe(df);
    for (const [index, [measurer, tem, degrees]] of incomplete.perMeasurer.entries()) {
      expect(errors.perMeasurer[index]?.measurer).toBe(measurer);
      close("safeTechnicalError", errors.perMeasurer[index]?.tem.mm.value, Number(tem), 11);
      expect(errors.perMeasurer[index]?.tem.degreesOfFreedom).toBe(degrees);
    }
  });

  test("between measurers, and altogether", () => {
    close("safeTechnicalError", errors.inter?.mm.value, incomplete.inter.value, 10);
    close("safeTechnicalError", errors.inter?.mm.lower, incomplete.inter.lower, 8);
    close("safeTechnicalError", errors.inter?.mm.upper, incomplete.inter.upper, 8);
    expect(errors.inter?.degreesOfFreedom).toBe(incomplete.inter.df);
    close("safeTechnicalError", errors.total?.mm.value, incomplete.total.value, 10);
    close("safeTechnicalError", errors.total?.mm.lower, incomplete.total.lower, 8);
    close("safeTechnicalError", errors.total?.mm.upper, incomplete.total.upper, 8);
  });

  test("precision after ISO 5725-2", () => {
    const precision = unwrap(safePrecision(study));
    close("safePrecision", precision.repeatability.value, incomplete.precision.repeatability, 11);
    close("safePrecision", precision.betweenMm, incomplete.precision.between, 10);
    close("safePrecision", precision.reproducibilityMm, incomplete.precision.reproducibility, 10);
  });
});

describe("Cochran's critical values", () => {
  test.each(cochran)("$count variances of $df degrees of freedom at $significance", (row) => {
    const critical = cochranCriticalValue(row.count, row.df, row.count * row.df, row.significance);
    close("cochranCriticalValue", critical, row.recomputed, 11);
    // Printed tables round the last digit now and then.
    if (row.printed !== undefined) expect(Math.abs(critical - Number(row.printed))).toBeLessThan(0.00075);
  });

  test("unequal degrees of freedom", () => {
    const { count, df, total, significance, recomputed } = cochranUnequal;
    close("cochranCriticalValue", cochranCriticalValue(count, df, total, significance), recomputed, 11);
  });
});
