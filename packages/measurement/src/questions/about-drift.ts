import { dimensionName } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { studentTUpperTail, summarise } from "@tapewise/statistics";
import { readingIssues } from "../reading-issues.ts";
import { type QuestionContext, roundedMm, textOf } from "./facts.ts";

const SIGNIFICANCE = 0.01;

/**
 * Readings that rise or fall from the first to the last (slumping, a stretching cord): the two-sided
 * t test of the least-squares slope over the order of reading, for four readings or more. A drift by no
 * more than one reading usually scatters is not worth a question.
 */
export function questionDrift(context: QuestionContext): readonly Issue[] {
  const { readings, usualMm, dimension, path } = context;
  const count = readings.length;
  if (count < 4) return [];
  const values = readings.map((reading) => reading.mm);
  const { mean } = summarise(values);
  const middle = (count - 1) / 2;
  let cross = 0;
  let total = 0;
  values.forEach((value, order) => {
    cross += (order - middle) * (value - mean);
    total += (value - mean) ** 2;
  });
  const orders = (count * (count ** 2 - 1)) / 12;
  const slope = cross / orders;
  const drift = slope * (count - 1);
  const residual = Math.max(0, total - slope * cross);
  if (Math.abs(drift) <= usualMm || total === 0) return [];
  const t =
    residual === 0 ? Number.POSITIVE_INFINITY : Math.abs(slope) / Math.sqrt(residual / (count - 2) / orders);
  if (2 * studentTUpperTail(t, count - 2) >= SIGNIFICANCE) return [];
  return [
    createIssue(readingIssues, "readings-drift", {
      path,
      received: textOf(readings),
      facts: { dimension: dimensionName(dimension), driftMm: roundedMm(drift) },
    }),
  ];
}
