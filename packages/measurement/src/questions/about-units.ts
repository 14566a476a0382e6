import { contains, type Interval } from "@tapewise/intervals";
import { dimensionName, plausibleLimits } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { describeUnit, fromMillimetres, type LengthReading, toMillimetres } from "@tapewise/units";
import { readingIssues } from "../reading-issues.ts";
import { type QuestionContext, textOf } from "./facts.ts";

/** Readings of one dimension that are written partly in feet or inches and partly in metric units. */
export function questionMixedUnits(context: QuestionContext): readonly Issue[] {
  const { readings, dimension, path } = context;
  if (new Set(readings.map((reading) => describeUnit(reading.unit).system)).size < 2) return [];
  return [
    createIssue(readingIssues, "readings-mixed-units", {
      path,
      received: textOf(readings),
      facts: { dimension: dimensionName(dimension) },
    }),
  ];
}

/**
 * Readings outside what surveys found for the dimension. Where the same number would be plausible in
 * another unit, the question names it; the reading stays as it is.
 *
 * A child's short back is no slip, so lengths down to those of children pass, but for one thing: a number
 * that is a child's in centimetres and a grown person's in inches is taken for the latter (assumption).
 */
export function questionPlausibility(context: QuestionContext): readonly Issue[] {
  const limits = plausibleLimits(context.dimension, "child");
  const adult = plausibleLimits(context.dimension, "adult");
  return context.readings.flatMap((reading, index) => {
    if (contains(adult, reading.mm)) return [];
    const other = otherUnit(reading, limits);
    if (other === undefined && contains(limits, reading.mm)) return [];
    const path = [...context.path, index];
    const dimension = dimensionName(context.dimension);
    if (other !== undefined) {
      return [
        createIssue(readingIssues, "reading-unit-suspect", {
          path,
          received: reading.text,
          facts: { dimension, other },
        }),
      ];
    }
    return [
      createIssue(readingIssues, "reading-implausible", {
        path,
        received: reading.text,
        facts: { dimension, lowestMm: limits.from, highestMm: limits.to },
      }),
    ];
  });
}

function otherUnit(reading: LengthReading, limits: Interval): string | undefined {
  const number = Number(fromMillimetres(reading.mm, reading.unit).toPrecision(6));
  for (const unit of ["cm", "in", "mm"] as const) {
    if (unit !== reading.unit && contains(limits, toMillimetres(number, unit))) return `${number} ${unit}`;
  }
  return undefined;
}
