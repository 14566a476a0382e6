/** A length that is known as centre + scale × Student's t (normal where the degrees of freedom are infinite). */
export interface UncertainLength {
  readonly meanMm: number;
  /** Scale in mm, the standard uncertainty; 0 means that the length is known. */
  readonly sdMm: number;
  /** Above 1, or `Infinity`. */
  readonly degreesOfFreedom: number;
}

/** How an uncertain length sits against an interval. The three probabilities sum to 1. */
export interface IntervalFit {
  readonly below: number;
  readonly inside: number;
  readonly above: number;
  /** Expected distance to the interval in mm: 0 for a length that is surely inside. */
  readonly expectedMisfitMm: number;
}
