import { dimensionName } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { median, summarise } from "@tapewise/statistics";
import { grubbsTest } from "../grubbs.ts";
import { readingIssues } from "../reading-issues.ts";
import { type QuestionContext, roundedMm } from "./facts.ts";

/** Significance of Grubbs' test: common practice (ISO 5725-2 calls a value beyond it a straggler). */
const SIGNIFICANCE = 0.05;
/** Two-sided 1 in 1000 point of the normal distribution, for a reading against the known method. */
const FAR = 3.2905;
/** Grubbs' test calls tiny differences outliers when the others agree; below this many usual SD none is. */
const NEAR = 2;
/** Nor is a reading on the mark next to the others: more than one step, with room for binary fractions. */
const STEPS = 1.5;

/**
 * Readings that lie apart from the others: by Grubbs' test when there are three or more, and by the
 * spread that is usual for the method. They are questioned and never left out.
 */
export function questionApart(context: QuestionContext): readonly Issue[] {
  const { readings, usualMm, stepMm } = context;
  if (readings.length < 3) return [];
  const values = readings.map((reading) => reading.mm);
  const middle = median(values);
  const grubbs = grubbsTest(values, SIGNIFICANCE);
  const statistic = grubbs.statistic * visibleShare(values, stepMm);
  const far = FAR * usualMm * Math.sqrt(1 + 1 / (values.length - 1));
  const near = Math.max(NEAR * usualMm, STEPS * stepMm);
  return readings.flatMap((reading, index) => {
    const difference = Math.abs(reading.mm - middle);
    const byMethod = usualMm > 0 && difference > Math.max(far, near);
    const byGrubbs = index === grubbs.index && statistic > grubbs.critical && difference > near;
    if (!byMethod && !byGrubbs) return [];
    return [
      createIssue(readingIssues, "reading-apart", {
        path: [...context.path, index],
        received: reading.text,
        facts: {
          dimension: dimensionName(context.dimension),
          readingMm: roundedMm(reading.mm),
          middleMm: roundedMm(middle),
          differenceMm: roundedMm(difference),
          usualMm: roundedMm(near),
          statistic: Math.round(statistic * 1000) / 1000,
          critical: Math.round(grubbs.critical * 1000) / 1000,
        },
      }),
    ];
  });
}

/**
 * What is left of Grubbs' statistic when the scatter that rounding may hide, q²/12, is added to that of the
 * sample. Two of three readings on one mark are no proof that these two agree to a hair.
 */
function visibleShare(values: readonly number[], stepMm: number): number {
  const { sd = 0 } = summarise(values);
  return sd === 0 ? 0 : sd / Math.sqrt(sd ** 2 + stepMm ** 2 / 12);
}
