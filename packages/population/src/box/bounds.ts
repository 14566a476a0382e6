/** Bounds of standard normal variables, with their correlations. */
export interface Bounds {
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly correlation: readonly (readonly number[])[];
}
