/** How people differ, and how repeated readings of one person do. In the unit of the readings. */
export interface VarianceComponents {
  /** `anova` where everybody was read equally often, `maximum-likelihood` where not. */
  readonly method: "anova" | "maximum-likelihood";
  readonly people: number;
  readonly readings: number;
  readonly mean: number;
  readonly meanError: number;
  /** Standard deviation of the people's own values, free of the error of reading. */
  readonly betweenSd: number;
  /** Absent where the spread between people is estimated as 0. */
  readonly betweenError?: number;
  /** Standard deviation of one reading about the person's own value: the technical error of measurement. */
  readonly withinSd: number;
  readonly withinError: number;
  /** The share of a single reading's variance that is between people (intraclass correlation). */
  readonly reliability: number;
}

/** How to estimate. */
export interface ComponentsOptions {
  /** `anova` needs equally many readings of everybody. By the data where it is left out. */
  readonly method?: VarianceComponents["method"];
}
