import type { landmarks, units } from "tapewise";

/** Where the beliefs about people stand. */
export interface PeopleTable {
  /** The table, or view, with a row for each person. */
  readonly people: string;
  /** The column that tells people apart. */
  readonly id: string;
  /** The unit of all means and standard deviations. */
  readonly unit: units.LengthUnit;
  /**
   * The columns with mean and standard deviation of a dimension; without them `torso_length_mean` and
   * `torso_length_sd` for the torso length, and so on.
   */
  readonly columns?: Readonly<Partial<Record<landmarks.DimensionId, BeliefColumns>>>;
  /** A column that holds 1 for people with a feature of build that speaks for the longer harness. */
  readonly hasBuild?: string;
}

/** The columns of one dimension. */
export interface BeliefColumns {
  readonly mean: string;
  readonly sd: string;
}
