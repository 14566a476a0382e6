/** An estimate with its confidence interval, in the unit of the readings. */
export interface IntervalEstimate {
  readonly value: number;
  readonly lower: number;
  readonly upper: number;
}

/** A point of the plot: the difference of a pair over its mean. */
export interface DifferencePoint {
  readonly mean: number;
  readonly difference: number;
}

/** One subject's readings in the two ways. */
export interface RepeatedPair {
  readonly first: readonly number[];
  readonly second: readonly number[];
}
