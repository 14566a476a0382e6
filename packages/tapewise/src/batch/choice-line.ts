import type { ReasonCode, Verdict } from "@tapewise/fit";
import type { DimensionId } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";

/** What the readings of one dimension say: lengths in mm. */
export interface EstimateSummary {
  readonly mm: number;
  /** Combined standard uncertainty. */
  readonly uncertaintyMm: number;
}

/** How one size fits. */
export interface SizeSummary {
  readonly size: string;
  /** Probability that the size fits in every judged dimension. */
  readonly probability: number;
  readonly expectedMisfitMm: number;
}

/** The answer for hip belts that are sized separately. */
export interface BeltSummary {
  readonly pick: string;
  /** Probability that the picked belt fits. */
  readonly probability: number;
  readonly sizes: readonly SizeSummary[];
}

/** The answer for one chart. */
export interface ChoiceSummary {
  readonly chart: string;
  readonly verdict: Verdict;
  readonly pick: string;
  /** Probability that the picked size fits; a hip belt that is sized separately has its own. */
  readonly probability: number;
  readonly sizes: readonly SizeSummary[];
  /** Absent where the belt comes with the size, or nothing was read that it goes by. */
  readonly belt?: BeltSummary;
  readonly reasons: readonly ReasonCode[];
}

/** An issue as a line carries it. */
export interface IssueSummary
  extends Pick<Issue, "code" | "severity" | "path" | "message" | "received" | "expected"> {
  /** The facts of the message, lengths in mm, where there are any. */
  readonly facts?: Issue["facts"];
}

/** The answer for one person. */
export interface ChoiceLine {
  /** As it came in; `null` where none was given. */
  readonly id: string | number | null;
  readonly estimates: Readonly<Partial<Record<DimensionId, EstimateSummary>>>;
  /** One for each chart that could be judged, in the order of the charts. */
  readonly choices: readonly ChoiceSummary[];
  /** Questions about the readings, and charts that could not be judged; absent where there are none. */
  readonly issues?: readonly IssueSummary[];
}

/** What is wrong with a line that no choice was made for. */
export interface IssueLine {
  /** As it came in; `null` where none could be read. */
  readonly id: string | number | null;
  readonly issues: readonly IssueSummary[];
}

/** A line that `tapewise batch` writes. */
export type BatchLine = ChoiceLine | IssueLine;
