/** A share of people, from 0 to 1. The band is there where the size of the survey was given. */
export interface Share {
  readonly share: number;
  /** Lower end of the band. */
  readonly low?: number;
  /** Upper end of the band. */
  readonly high?: number;
}
