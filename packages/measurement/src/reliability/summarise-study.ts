import { type Issue, type Outcome, relocateIssue } from "@tapewise/outcome";
import { requireShare } from "../require-number.ts";
import type { Study } from "../study/study.ts";
import type { BlandAltmanOptions } from "./bland-altman.ts";
import { type MeasurerAgreement, safeMeasurerAgreement } from "./bland-altman-of-study.ts";
import { safeCompareAllowance } from "./compare-allowance.ts";
import { observerAllowances } from "./data.ts";
import { safeDigitPreference } from "./digit-preference.ts";
import { safeComponentIcc } from "./icc-of-components.ts";
import { minimalDetectableChange } from "./minimal-detectable-change.ts";
import { safeRepeatTrend } from "./repeat-trend.ts";
import { safePrecision } from "./safe-precision.ts";
import type { DetectableChange, StudyReport } from "./study-report.ts";
import { safeTechnicalError } from "./technical-error.ts";
import type { TechnicalError } from "./tem.ts";

/** How sure, and by which conventions measurers are compared. */
export interface StudyReportOptions {
  /** Probability of all intervals; 0.95 where it is left out. */
  readonly confidence?: number;
  /** The conventions of the limits of agreement. */
  readonly limits?: Omit<BlandAltmanOptions, "confidence">;
}

/**
 * All that a study tells, in one object: technical errors, precision after ISO 5725-2 with its screening, correlation,
 * agreement of every two measurers, the smallest detectable change, the trend over repeats, digit preference and the
 * comparison with a published limit. A part that the study cannot tell is absent, and `issues` says why.
 *
 * @throws {@link InvalidArgumentError} when the confidence is not above 0 and below 1, or a convention is out of range.
 *
 * @example
 * ```ts
 * import { parseStudy, summariseStudy } from "@tapewise/measurement";
 * const report = summariseStudy(parseStudy("subject,torso A1 (mm),torso A2 (mm)\nmia,430,434\nleo,480,480\nana,455,453\n"));
 * report.size.readings; // => 6
 * // TEM² = 20/6; 1.96 · √2 · TEM
 * report.detectableChange.sameMeasurerMm?.toFixed(2); // => "5.06"
 * report.issues.map((issue) => `${issue.path[0]}: ${issue.code}`);
 * // => ["technicalError: tem-inter-unknown", "precision: precision-unknown", "digits: digits-few"]
 * ```
 */
export function summariseStudy(study: Study, options: StudyReportOptions = {}): StudyReport {
  const confidence = options.confidence ?? 0.95;
  requireShare("confidence", confidence);
  const issues: Issue[] = [];
  const take = <T>(part: string, outcome: Outcome<T>, path: readonly string[] = []): T | undefined => {
    issues.push(...outcome.issues.map((issue) => relocateIssue(issue, [part, ...path])));
    return outcome.ok ? outcome.value : undefined;
  };
  const technicalError = take("technicalError", safeTechnicalError(study, { confidence }));
  const precision = take("precision", safePrecision(study, { confidence }));
  const correlation = take("correlation", safeComponentIcc(study, { confidence }));
  const agreement = study.measurers.flatMap((first, index): readonly MeasurerAgreement[] =>
    study.measurers.slice(index + 1).flatMap((second) => {
      const outcome = safeMeasurerAgreement(study, { ...options.limits, first, second, confidence });
      const value = take("agreement", outcome, [first, second]);
      return value === undefined ? [] : [value];
    }),
  );
  const trend = study.repeats < 2 ? undefined : take("trend", safeRepeatTrend(study, { confidence }));
  const digits = take("digits", safeDigitPreference(study));
  const isLimited = observerAllowances.some(({ dimension }) => dimension === study.dimension);
  const allowance = isLimited ? take("allowance", safeCompareAllowance(study)) : undefined;
  return {
    ...(study.dimension === undefined ? {} : { dimension: study.dimension }),
    confidence,
    size: {
      subjects: study.subjects.length,
      measurers: study.measurers.length,
      repeats: study.repeats,
      readings: study.readings.length,
      missing: study.missing.length,
      setAside: study.setAside.length,
    },
    ...(technicalError === undefined ? {} : { technicalError }),
    ...(precision === undefined ? {} : { precision }),
    ...(correlation === undefined ? {} : { correlation }),
    agreement,
    detectableChange: technicalError === undefined ? {} : detectableChange(technicalError, confidence),
    ...(trend === undefined ? {} : { trend }),
    ...(digits === undefined ? {} : { digits }),
    ...(allowance === undefined ? {} : { allowance }),
    issues,
  };
}

/** Without repeats the error between measurers holds that within them, so that the total is what it says. */
function detectableChange({ intra, total }: TechnicalError, confidence: number): DetectableChange {
  const change = (errorMm: number): number => minimalDetectableChange(errorMm, { confidence });
  return {
    ...(intra === undefined ? {} : { sameMeasurerMm: change(intra.mm.value) }),
    ...(total === undefined ? {} : { anyMeasurerMm: change(total.mm.value) }),
  };
}
