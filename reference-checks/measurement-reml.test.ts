import { type ComponentTerm, createStudy, safeVarianceComponents } from "@tapewise/measurement";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import lme4 from "./reliability-lme4.json" with { type: "json" };
import { against } from "./table/against.ts";

/**
 * Unbalanced studies against lme4, an independent implementation (D. Bates et al., 2015, Journal of Statistical
 * Software 67(1)). lme4's own optimiser leaves its answer with about seven digits; the script beside the data drives
 * the slope of its criterion on to 0, so that ten can be compared.
 */
const TOLERANCE = 1e-9;

function expectClose(actual: number | undefined, reference: string | number): void {
  against({
    of: "measurement.safeVarianceComponents",
    source: "lme4 (Bates et al. 2015), restricted maximum likelihood of unbalanced studies",
    origin: "recomputed with R, lme4",
    why: "the slope of lme4's criterion is driven on to 0 as far as differences allow",
  }).relative(actual, reference, TOLERANCE);
}

test("there are three unbalanced studies and more", () => {
  expect(lme4.fits.length).toBeGreaterThanOrEqual(5);
});

describe.each(lme4.fits)("$name", (fit) => {
  const terms: ComponentTerm[] = [
    ...(fit.terms.includes("(1 | measurer)") ? ["measurer" as const] : []),
    ...(fit.terms.includes("(1 | subject:measurer)") ? ["subject-by-measurer" as const] : []),
  ];
  const study = createStudy({ readings: fit.readings.map((row) => ({ ...row, mm: millimetres(row.mm) })) });
  const outcome = safeVarianceComponents(study, { terms });
  if (!outcome.ok) throw new Error(outcome.issues[0].message);
  const { value, issues } = outcome;

  test("has lme4's variances", () => {
    expectClose(value.subjectVariance, fit.subjectVariance);
    expectClose(value.measurerVariance ?? 0, fit.measurerVariance);
    expectClose(value.interactionVariance ?? 0, fit.interactionVariance);
    expectClose(value.residualVariance, fit.residualVariance);
  });

  test("has lme4's mean with its standard error, and its criterion", () => {
    expectClose(value.meanMm, fit.mean);
    expectClose(value.meanErrorMm, fit.meanError);
    expectClose(value.remlCriterion, fit.criterion);
  });

  test("says which variance is at 0", () => {
    const atZero = terms.includes("measurer") && Number(fit.measurerVariance) === 0;
    expect(issues.map(({ code, facts }) => [code, facts.component])).toEqual(
      atZero ? [["component-zero", "measurer"]] : [],
    );
  });
});
