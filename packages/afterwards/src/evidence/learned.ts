/** A figure that is known as a distribution. */
export interface Learned {
  readonly mean: number;
  readonly sd: number;
  /** The middle 90 % lie between these. */
  readonly lower: number;
  readonly upper: number;
}

/**
 * How the ranges of a product, or of a maker's products in general, sit against what the chart prints. Offset and
 * factor are what they are if the maker's charts are not as printed; `asPrintedProbability` says whether they are.
 */
export interface LearnedChart {
  /** How many outcomes speak of it. */
  readonly outcomes: number;
  /** What is to be added to both ends of a printed range, in mm: above 0 where the pack comes out longer. */
  readonly offsetMm: Learned;
  /** What the width of a printed range is to be multiplied by; an open range has none. Its mean is the geometric one. */
  readonly widthFactor: Learned;
  /** Covariance of the two, in mm. */
  readonly covarianceMm: number;
  /** The chance that all charts of the maker are as printed. */
  readonly asPrintedProbability: number;
}
