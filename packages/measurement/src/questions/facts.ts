import type { DimensionId } from "@tapewise/landmarks";
import type { IssuePath } from "@tapewise/outcome";
import type { LengthReading } from "@tapewise/units";

/** What a question about readings looks at. */
export interface QuestionContext {
  readonly dimension: DimensionId;
  readonly readings: readonly LengthReading[];
  readonly path: IssuePath;
  /** Standard deviation of one reading that is usual for the method, in mm. */
  readonly usualMm: number;
  /** The step the readings are written to, in mm. */
  readonly stepMm: number;
}

/** A length in mm as a fact: at most one decimal, so that a sentence stays readable. */
export function roundedMm(lengthMm: number): number {
  return Math.round(lengthMm * 10) / 10;
}
