import { plausibleLimits } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { fromMillimetres, type LengthReading, type LengthUnit, toMillimetres } from "@tapewise/units";
import { measurementIssues } from "../issues.ts";
import { type QuestionContext, spoken } from "./facts.ts";

const INCH_UNITS: readonly LengthUnit[] = ["in", "ft"];

/** Readings of one dimension that are written partly in inches and partly in metric units. */
export function questionMixedUnits(context: QuestionContext): readonly Issue[] {
  const { readings, dimension, path } = context;
  const inches = readings.filter((reading) => INCH_UNITS.includes(reading.unit)).length;
  if (inches === 0 || inches === readings.length) return [];
  return [
    createIssue(measurementIssues, "readings-mixed-units", {
      path,
      received: readings.map((reading) => reading.text).join(", "),
      facts: { dimension: spoken(dimension) },
    }),
  ];
}

/**
 * Readings outside what surveys found for the dimension. Where the same number would be plausible in
 * another unit, the question names it; the reading stays as it is.
 */
export function questionPlausibility(context: QuestionContext): readonly Issue[] {
  const limits = plausibleLimits(context.dimension);
  const isPlausible = (lengthMm: number) => lengthMm >= limits.lowestMm && lengthMm <= limits.highestMm;
  return context.readings.flatMap((reading, index) => {
    if (isPlausible(reading.mm)) return [];
    const path = [...context.path, index];
    const dimension = spoken(context.dimension);
    const other = otherUnit(reading, isPlausible);
    if (other !== undefined) {
      return [
        createIssue(measurementIssues, "reading-unit-suspect", {
          path,
          received: reading.text,
          facts: { dimension, other },
        }),
      ];
    }
    return [
      createIssue(measurementIssues, "reading-implausible", {
        path,
        received: reading.text,
        facts: { dimension, lowestMm: limits.lowestMm, highestMm: limits.highestMm },
      }),
    ];
  });
}

function otherUnit(reading: LengthReading, isPlausible: (lengthMm: number) => boolean): string | undefined {
  const number = Number(fromMillimetres(reading.mm, reading.unit).toPrecision(6));
  for (const unit of ["cm", "in", "mm"] as const) {
    if (unit !== reading.unit && isPlausible(toMillimetres(number, unit))) return `${number} ${unit}`;
  }
  return undefined;
}
