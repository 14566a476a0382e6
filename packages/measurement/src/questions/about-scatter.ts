import { dimensionName } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { chiSquareUpperTail, summarise } from "@tapewise/statistics";
import { readingIssues } from "../reading-issues.ts";
import { type QuestionContext, roundedMm, textOf } from "./facts.ts";

const SIGNIFICANCE = 0.01;

/**
 * Readings that scatter more than the method should: the chi-square test of a variance,
 * (n−1)s²/σ² against its upper 1 % point.
 */
export function questionScatter(context: QuestionContext): readonly Issue[] {
  const { readings, usualMm, dimension, path } = context;
  if (readings.length < 2 || usualMm === 0) return [];
  const { sd = 0 } = summarise(readings.map((reading) => reading.mm));
  const degrees = readings.length - 1;
  const statistic = degrees * (sd / usualMm) ** 2;
  if (chiSquareUpperTail(statistic, degrees) >= SIGNIFICANCE) return [];
  return [
    createIssue(readingIssues, "readings-scatter", {
      path,
      received: textOf(readings),
      facts: { dimension: dimensionName(dimension), sampleMm: roundedMm(sd), usualMm: roundedMm(usualMm) },
    }),
  ];
}
