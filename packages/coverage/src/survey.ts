/** What is known of the survey that a population comes from, and how its bands are made. */
export interface SurveyOptions {
  /** How many people were measured; for a mixture a number for each of its parts. */
  readonly people: number | readonly number[];
  /** The confidence of the bands; 0.95 where it is left out. */
  readonly confidence?: number;
  /** How many surveys the bootstrap repeats; 400 where it is left out. */
  readonly replicates?: number;
  /** Where the stream of the bootstrap starts; 1 where it is left out. */
  readonly seed?: number;
}

/** How bands were made. */
export interface Band {
  readonly confidence: number;
  readonly people: readonly number[];
  /**
   * `parametric-bootstrap`: surveys of the same size are drawn from the normal model, means and covariances
   * estimated anew, and the middle of the shares taken. `wilson`: Wilson's interval for a counted share, which no
   * model narrows. Neither knows whether the people asked about are like those who were surveyed.
   */
  readonly method: "parametric-bootstrap" | "wilson";
}
