import type { DimensionId } from "@tapewise/landmarks";

/** The version of the form in which rows are written today. */
export const OUTCOME_VERSION = 1;

/** Every {@link OutcomeKind}. */
export const outcomeKinds = ["kept", "exchanged"] as const;

/** What became of a pack that somebody was given. */
export type OutcomeKind = (typeof outcomeKinds)[number];

/** Every {@link ExchangeReason}. */
export const exchangeReasons = [
  "harness-too-short",
  "harness-too-long",
  "hip-belt-too-small",
  "hip-belt-too-large",
  "uncomfortable",
  "not-about-fit",
] as const;

/**
 * Why a pack was exchanged. The first four say on which side of the size the body lies; `uncomfortable` says
 * that the fit was wrong and not where; `not-about-fit` stands for colour, weight, price, a fault. A reason that
 * nobody told is left out.
 */
export type ExchangeReason = (typeof exchangeReasons)[number];

/** What was believed of one dimension when the size was chosen. */
export interface OutcomeEstimate {
  /** Millimetres. */
  readonly mm: number;
  /** Combined standard uncertainty in mm. */
  readonly uncertaintyMm: number;
  /** Effective degrees of freedom; absent where the uncertainty counts as known. */
  readonly degreesOfFreedom?: number;
}

/** The chart that a size was taken from. */
export interface OutcomeProduct {
  readonly maker?: string;
  /** The chart's own name, as a recommendation has it. */
  readonly chart: string;
}

/** One pack given to one person, and what became of it: a line of the log. */
export interface OutcomeRow {
  /** Version of the form of the row. */
  readonly v: typeof OUTCOME_VERSION;
  /** A name of the row that no other has; it is what tells a row that was written twice from two rows. */
  readonly id?: string;
  /** When it was known: an ISO 8601 date, or a date and time with its offset from UTC. The caller's clock. */
  readonly at: string;
  /**
   * A pseudonym that the caller chose and that means nothing to others. It is what forgetting somebody goes
   * by: rows without one cannot be found again.
   */
  readonly person?: string;
  readonly product: OutcomeProduct;
  /** The size that was given, as the chart names it. */
  readonly size: string;
  readonly outcome: OutcomeKind;
  /** Only of an exchange. */
  readonly reason?: ExchangeReason;
  /** Only of an exchange: the size that was taken in its place, and kept as far as is known. */
  readonly exchangedFor?: string;
  readonly estimates?: { readonly [D in DimensionId]?: OutcomeEstimate };
}
