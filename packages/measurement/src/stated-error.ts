/**
 * The error of readings where it is known, say from a reliability study: it then replaces the whole
 * table of defaults, and counts as known exactly (infinite degrees of freedom).
 */
export interface StatedError {
  /** Standard deviation, in mm, of the error that all readings of one person share. */
  readonly biasMm: number;
  /** Standard deviation, in mm, of one reading about that person's own mean. */
  readonly repeatMm: number;
  /** The step, in mm, that readings are rounded to. */
  readonly resolutionMm: number;
}
