import type { DimensionId } from "@tapewise/landmarks";
import type { IssuePath } from "@tapewise/outcome";
import type { LengthReading } from "@tapewise/units";

/** What a question about readings looks at. Lengths are in mm. */
export interface QuestionContext {
  readonly dimension: DimensionId;
  readonly readings: readonly LengthReading[];
  readonly path: IssuePath;
  /** Standard deviation by which readings of the method scatter before they are rounded. */
  readonly repeatMm: number;
  /** Standard deviation of one reading as it is written down, rounding and what may be included. */
  readonly usualMm: number;
  /** The step that the readings are written to. */
  readonly writtenMm: number;
  /** The step that they are taken to be rounded to. */
  readonly stepMm: number;
}

/** All readings as they were written, for an issue to show. */
export function textOf(readings: readonly LengthReading[]): string {
  return readings.map((reading) => reading.text).join(", ");
}

/** A length in mm as a fact: one decimal, below 1 mm two digits, so that a sentence stays readable. */
export function roundedMm(lengthMm: number): number {
  return Math.abs(lengthMm) < 1 ? Number(lengthMm.toPrecision(2)) : Math.round(lengthMm * 10) / 10;
}
