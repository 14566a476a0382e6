import type { DimensionId } from "../dimension-id.ts";

/** What a survey says of one dimension in one sex, in millimetres. */
export interface SurveyFigures {
  readonly dimension: DimensionId;
  readonly sex: "women" | "men";
  /** The survey's own name of the column, or how the figure was made of two columns. */
  readonly column: string;
  /** `all`: everybody in the public data. `even`: those with an even subject number, about half. */
  readonly sample: "all" | "even";
  readonly people: number;
  readonly meanMm: number;
  readonly sdMm: number;
  readonly minMm: number;
  readonly maxMm: number;
}
