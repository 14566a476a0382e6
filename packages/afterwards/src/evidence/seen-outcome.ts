import type { ChartDimension } from "@tapewise/charts";

/**
 * On which side of a range a body turned out to be: `below` where the part was too long or too wide for it,
 * `above` where it was too short or too tight.
 */
export type Side = "below" | "inside" | "above";

/** A product of a maker; a product whose chart names no maker has one of its own. */
export interface ProductKey {
  readonly maker?: string;
  /** The name of its chart. */
  readonly product: string;
}

/** What one outcome says of one dimension of one product, as numbers. */
export interface SeenOutcome extends ProductKey {
  readonly dimension: ChartDimension;
  /** The range as the chart prints it; an open end is infinite. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly side: Side;
  /** What was believed of the body at the time, before the outcome. */
  readonly meanMm: number;
  /** Standard deviation of that belief. */
  readonly sdMm: number;
}
