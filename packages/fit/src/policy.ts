/** The figures that turn probabilities into a verdict and settle ties. All of them are assumptions. */
export interface FitPolicy {
  /** From this probability on a size is said to fit. */
  readonly fitProbability: number;
  /**
   * The most fit probability that a reason of build or of adjustability may cost. Two sizes that are this
   * close and exclude each other are a toss-up: the body is between them.
   */
  readonly tieLoss: number;
  /** From this probability on a pick counts as sure, and no further reading is asked for. */
  readonly sureProbability: number;
  /** "Measure again" needs at least this chance that further readings change the pick. */
  readonly changeProbability: number;
  /** "Measure again" needs at least this expected rise in the probability of the right size. */
  readonly worthwhileGain: number;
  /** At most this many further readings are proposed; with 0 none are. */
  readonly mostFurtherReadings: number;
  /** Below this probability no size is called likely, and the smallest expected misfit decides. */
  readonly hopelessProbability: number;
  /** A reading that the prior gives less than this chance, two-sided, is questioned. */
  readonly questionProbability: number;
}

/**
 * The policy used where the caller states none. Basis of every figure: assumption, chosen so that a
 * reason other than fit never costs more than one wrong size in twenty close calls.
 */
export const defaultPolicy: FitPolicy = {
  fitProbability: 0.5,
  sureProbability: 0.9,
  tieLoss: 0.05,
  changeProbability: 0.15,
  worthwhileGain: 0.03,
  mostFurtherReadings: 3,
  hopelessProbability: 0.01,
  questionProbability: 0.002,
};
