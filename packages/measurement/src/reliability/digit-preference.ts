import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import { chiSquareUpperTail } from "@tapewise/statistics";
import { describeUnit, type LengthUnit } from "@tapewise/units";
import type { Study, StudyReading } from "../study/study.ts";
import { groupBy } from "./cell-means.ts";
import { temIssues } from "./tem-issues.ts";

/** How often each last digit was written. */
export interface DigitCounts {
  readonly unit: LengthUnit;
  /** The finest step that anybody wrote in this unit, in mm: readings with fewer decimals are taken to end in 0. */
  readonly stepMm: number;
  /** A count for each digit from 0 on: ten for decimals, eight for eighths of an inch. */
  readonly counts: readonly number[];
  readonly readings: number;
  /** Pearson's χ² against equal counts. */
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  /** How far readings of the same subject, which share digits, widen χ²: 1 or more. */
  readonly designEffect: number;
  /** The chance of a χ²/designEffect as large where no digit is preferred. */
  readonly pValue: number;
  /** 100·√(χ² / (readings · degrees of freedom)): 0 without preference, 100 where one digit stands everywhere. */
  readonly index: number;
}

/** Digits of a study in each unit that it was written in, and those of each measurer. */
export interface DigitPreference {
  readonly all: readonly DigitCounts[];
  readonly perMeasurer: readonly { readonly measurer: string; readonly digits: readonly DigitCounts[] }[];
  /** Readings that do not say how they were written; they take no part. */
  readonly unknown: number;
}

/** χ² is rough where fewer are expected of a digit (W. G. Cochran, 1954, Biometrics 10, 417–451). */
const FEW = 5;

/**
 * Whether some last digits were written more often than others, as 0 and 5 are where a tape is read carelessly. Digits
 * are those of the unit in which a reading was written, at the finest step written in that unit by anybody in the study:
 * the millimetre of 43.2 cm, the eighth of 17 3/8 in.
 *
 * Pearson's χ² against equal counts; where subjects are read several times, it is divided by the mean design effect of
 * the digits, subjects taken as clusters (J. N. K. Rao & A. J. Scott, 1981, Journal of the American Statistical Association 76,
 * 221–230, first order; a design effect below 1 counts as 1). The index is the digit preference score of the WHO MONICA Project
 * (K. Kuulasmaa, H. W. Hense & H. Tolonen, 1998). Equal counts are to be expected only where subjects differ by
 * several times ten steps.
 *
 * Issue codes: `digits-unknown` (no value); `digits-few` (warning).
 *
 * @example
 * ```ts
 * import { parseStudy, safeDigitPreference } from "@tapewise/measurement";
 * const rows = ["mia,43.0", "leo,48.5", "ana,45.0", "ben,44", "eva,46.5", "tom,47.0"].join("\n");
 * const outcome = safeDigitPreference(parseStudy(`subject,A1 (cm)\n${rows}`));
 * outcome.ok && outcome.value.all[0]?.counts; // => [4, 0, 0, 0, 0, 2, 0, 0, 0, 0]
 * // χ² = (16 + 4) / 0.6 − 6
 * outcome.ok && outcome.value.all[0]?.chiSquare.toFixed(3); // => "27.333"
 * ```
 */
export function safeDigitPreference(study: Study): Outcome<DigitPreference> {
  const written = study.readings.flatMap(
    ({ unit, stepMm, mm, subject, measurer }): readonly WrittenReading[] =>
      unit === undefined || stepMm === undefined ? [] : [{ unit, stepMm, mm, subject, measurer }],
  );
  if (written.length === 0) {
    return failure([createIssue(temIssues, "digits-unknown", { received: study.readings.length })]);
  }
  const steps = new Map<LengthUnit, number>();
  for (const { unit, stepMm } of written) steps.set(unit, Math.min(stepMm, steps.get(unit) ?? stepMm));
  const all = countDigits(written, steps);
  const perMeasurer = [...groupBy(written, ({ measurer }) => measurer)].map(([measurer, own]) => ({
    measurer,
    digits: countDigits(own, steps),
  }));
  const issues: Issue[] = all
    .filter(({ readings, counts }) => readings < FEW * counts.length)
    .map(({ readings, counts, unit }) => {
      const facts = { count: readings, classes: counts.length };
      return createIssue(temIssues, "digits-few", { path: [unit], received: readings, facts });
    });
  return success({ all, perMeasurer, unknown: study.readings.length - written.length }, issues);
}

type WrittenReading = Required<Pick<StudyReading, "unit" | "stepMm" | "mm" | "subject" | "measurer">>;

function countDigits(
  readings: readonly WrittenReading[],
  steps: ReadonlyMap<LengthUnit, number>,
): readonly DigitCounts[] {
  return [...groupBy(readings, ({ unit }) => unit).values()].flatMap((own): readonly DigitCounts[] => {
    const [first] = own;
    const stepMm = first === undefined ? undefined : steps.get(first.unit);
    if (first === undefined || stepMm === undefined) return [];
    const classes = classesOf(first.unit, stepMm);
    const digits = own.map(({ mm, subject }) => ({ subject, digit: Math.round(mm / stepMm) % classes }));
    const counts = Array.from(
      { length: classes },
      (_, digit) => digits.filter((each) => each.digit === digit).length,
    );
    const expected = own.length / classes;
    const chiSquare = counts.reduce((sum, count) => sum + (count - expected) ** 2, 0) / expected;
    const degreesOfFreedom = classes - 1;
    const designEffect = meanDesignEffect(digits, classes);
    return [
      {
        unit: first.unit,
        stepMm,
        counts,
        readings: own.length,
        chiSquare,
        degreesOfFreedom,
        designEffect,
        pValue: chiSquareUpperTail(chiSquare / designEffect, degreesOfFreedom),
        index: 100 * Math.sqrt(chiSquare / (own.length * degreesOfFreedom)),
      },
    ];
  });
}

/** Ten digits for decimals and whole units; as many as there are parts for a unit written in fractions. */
function classesOf(unit: LengthUnit, stepMm: number): number {
  const parts = Math.round(describeUnit(unit).nanometres / 1e6 / stepMm);
  return parts <= 1 || /^10*$/.test(String(parts)) ? 10 : parts;
}

/** Mean over the digits of the variance of their shares by subjects, relative to that of independent readings. */
function meanDesignEffect(
  digits: readonly { readonly subject: string; readonly digit: number }[],
  classes: number,
): number {
  const clusters = [...groupBy(digits, ({ subject }) => subject).values()];
  const n = digits.length;
  if (clusters.length < 2 || clusters.length === n) return 1;
  const share = 1 / classes;
  let squares = 0;
  for (const own of clusters) {
    for (let digit = 0; digit < classes; digit++) {
      const count = own.filter((each) => each.digit === digit).length;
      squares += (count - share * own.length) ** 2;
    }
  }
  // Each digit's variance of independent readings is n·p(1 − p); over all digits their weights add to n(1 − p)·p·classes.
  const effect = ((squares / (classes * n * share * (1 - share))) * clusters.length) / (clusters.length - 1);
  return Math.max(1, effect);
}
