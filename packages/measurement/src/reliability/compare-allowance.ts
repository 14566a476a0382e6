import { createIssue, failure, type Outcome, success } from "@tapewise/outcome";
import type { Study, StudyReading } from "../study/study.ts";
import { groupBy } from "./cell-means.ts";
import { observerAllowances } from "./data.ts";
import type { ObserverAllowance } from "./observer-allowance.ts";
import { temIssues } from "./tem-issues.ts";

/** Pairs of readings of the same subject, and how many of them differ by more than the allowance. */
export interface AllowancePairs {
  readonly pairs: number;
  readonly beyond: number;
  readonly largestMm: number;
}

/** A study held against a published limit on the difference between two readings. */
export interface AllowanceComparison {
  readonly allowance: ObserverAllowance;
  /** Pairs by the same measurer; absent where there are none. */
  readonly sameMeasurer?: AllowancePairs;
  /** Pairs by two measurers; absent where there are none. */
  readonly twoMeasurers?: AllowancePairs;
}

/** Differences as lengths in mm carry rounding errors of their own: a billionth of a millimetre is none. */
const SLACK_MM = 1e-9;

/**
 * Holds all pairs of readings of the same subject against the published limit of the study's dimension
 * (`observerAllowances`). Dimensions for which no limit was published, or only one for another way of measuring, have none
 * here: torso length is among them.
 *
 * Issue codes: `allowance-unknown`, `allowance-no-pairs` (no value).
 *
 * @example
 * ```ts
 * import { parseStudy, safeCompareAllowance } from "@tapewise/measurement";
 * const study = parseStudy("subject,stature A1 (mm),stature A2 (mm),stature B1 (mm)\nmia,1702,1705,1711\n");
 * const outcome = safeCompareAllowance(study);
 * outcome.ok && outcome.value.allowance.mm; // => 6
 * outcome.ok && outcome.value.sameMeasurer; // => { pairs: 1, beyond: 0, largestMm: 3 }
 * outcome.ok && outcome.value.twoMeasurers; // => { pairs: 2, beyond: 1, largestMm: 9 }
 * ```
 */
export function safeCompareAllowance(study: Study): Outcome<AllowanceComparison> {
  const allowance = observerAllowances.find(({ dimension }) => dimension === study.dimension);
  if (allowance === undefined) {
    const known = observerAllowances.map(({ dimension }) => dimension).join(", ");
    const received = study.dimension ?? "a dimension that is not stated";
    return failure([createIssue(temIssues, "allowance-unknown", { received, facts: { known } })]);
  }
  const same: number[] = [];
  const two: number[] = [];
  for (const own of groupBy(study.readings, ({ subject }) => subject).values()) {
    for (const [index, first] of own.entries()) {
      for (const second of own.slice(index + 1)) differenceInto(first, second, same, two);
    }
  }
  if (same.length + two.length === 0) {
    return failure([createIssue(temIssues, "allowance-no-pairs", { received: study.readings.length })]);
  }
  const sameMeasurer = pairsOf(same, allowance.mm);
  const twoMeasurers = pairsOf(two, allowance.mm);
  return success({
    allowance,
    ...(sameMeasurer === undefined ? {} : { sameMeasurer }),
    ...(twoMeasurers === undefined ? {} : { twoMeasurers }),
  });
}

function differenceInto(first: StudyReading, second: StudyReading, same: number[], two: number[]): void {
  (first.measurer === second.measurer ? same : two).push(Math.abs(first.mm - second.mm));
}

function pairsOf(differences: readonly number[], limitMm: number): AllowancePairs | undefined {
  if (differences.length === 0) return undefined;
  return {
    pairs: differences.length,
    beyond: differences.filter((difference) => difference > limitMm + SLACK_MM).length,
    largestMm: differences.reduce((largest, difference) => Math.max(largest, difference), 0),
  };
}
