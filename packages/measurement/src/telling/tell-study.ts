import type { StudyReport } from "../reliability/study-report.ts";
import { requireUnit } from "./require-unit.ts";
import { tellAgreement } from "./tell-agreement.ts";
import { tellAllowance } from "./tell-allowance.ts";
import { tellChange } from "./tell-change.ts";
import { tellCorrelation } from "./tell-correlation.ts";
import { tellDigits } from "./tell-digits.ts";
import { tellPrecision } from "./tell-precision.ts";
import { tellTechnicalError } from "./tell-technical-error.ts";
import { tellTrend } from "./tell-trend.ts";
import type { ToldSection, ToldUnit } from "./told.ts";

/**
 * What a study tells, in words: for each part a table, how its figures were made, and one plain sentence on what it
 * means for whoever fits packs. Parts that the study cannot tell are absent. To print, on paper or in a page.
 *
 * @param unit - the unit to tell lengths in
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { parseStudy, summariseStudy, tellStudy } from "@tapewise/measurement";
 * const report = summariseStudy(parseStudy("subject,torso A1 (mm),torso A2 (mm)\nmia,430,434\nleo,480,480\nana,455,453\n"));
 * const [first] = tellStudy(report, "cm");
 * first?.title; // => "Technical error of measurement (TEM)"
 * // TEM² = 20/6 mm²
 * first?.tables[0]?.rows[0]?.slice(0, 2); // => ["within measurers", "0.18"]
 * ```
 */
export function tellStudy(report: StudyReport, unit: ToldUnit): readonly ToldSection[] {
  requireUnit(unit);
  const { technicalError, precision, correlation, trend, digits, allowance } = report;
  return [
    technicalError && tellTechnicalError(technicalError, unit),
    precision && tellPrecision(precision, unit),
    correlation && tellCorrelation(correlation),
    tellAgreement(report.agreement, unit),
    tellChange(report.detectableChange, report.confidence, unit),
    trend && tellTrend(trend, unit),
    digits && tellDigits(digits),
    allowance && tellAllowance(allowance, unit),
  ].filter((section) => section !== undefined);
}
