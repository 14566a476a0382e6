/** A sample in a few numbers, all in the unit of its values. */
export interface Summary {
  /** How many values. */
  readonly n: number;
  readonly mean: number;
  /** Sample standard deviation, with n − 1 below the line; undefined for a single value. */
  readonly sd: number | undefined;
  readonly min: number;
  readonly max: number;
}
