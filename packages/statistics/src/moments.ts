/**
 * What a sample leaves behind when only its size, centre and spread are wanted. Two of them merge without
 * the values, so that parts of a sample can be counted apart and put together.
 */
export interface Moments {
  /** How many values. */
  readonly n: number;
  readonly mean: number;
  /** Sum of squared deviations from the mean. */
  readonly squares: number;
  readonly min: number;
  readonly max: number;
}
