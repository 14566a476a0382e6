import type { SizeChart } from "@tapewise/charts";
import type { UncertainLength } from "@tapewise/fit";
import type { CautionCode } from "@tapewise/landmarks";
import type { ExchangeReason } from "../log/outcome-row.ts";
import type { AdjustmentCode, BodyCheckItemId, CheckedPart } from "./body-check-item.ts";

/** What a check starts from. */
export interface BodyCheckSetup {
  readonly chart: SizeChart;
  /** The size that is on the body. */
  readonly size: string;
  /** The hip belt, where belts are sized apart. */
  readonly belt?: string;
  /**
   * What is believed of the length that the harness goes by, for most charts the torso length; left out where nothing is
   * known of it, or the chart does not size by one.
   */
  readonly length?: UncertainLength;
  /**
   * Standard deviation in mm of how far the chart's lengths, and its girths, may be off, for the pack shows what its chart
   * may not; what is assumed of a maker that nothing was learned of, where it is left out.
   */
  readonly chartDoubtMm?: { readonly length: number; readonly girth: number };
  /** What is believed of the girth that the belt goes by; left out where nothing is known of it. */
  readonly girth?: UncertainLength;
}

/** An answer that was given. */
export interface GivenAnswer {
  readonly item: BodyCheckItemId;
  readonly answer: string;
}

/** Why a professional fitter, or a clinician, has to look. */
export type FitterReason =
  | CautionCode
  | "answers-contradict"
  | "too-little-seen"
  | "no-size-left"
  | "not-by-size"
  | "readings-disagree"
  | "belt-comes-with-size"
  | "still-not-right";

/** What the answers contradict each other in. */
export type Contradiction = "harness-long-and-short" | "belt-large-and-small";

/** How likely one size, or belt, fits after what was seen. */
export interface SeenSize {
  readonly size: string;
  readonly probability: number;
}

/** What is to be done next. `ask` goes on; all others end the look. */
export type BodyCheckStep =
  | {
      readonly kind: "ask";
      readonly item: BodyCheckItemId;
      /** Set where two answers contradict each other, and both are asked again. */
      readonly because?: Contradiction;
    }
  | { readonly kind: "adjust"; readonly adjustments: readonly [AdjustmentCode, ...AdjustmentCode[]] }
  | {
      readonly kind: "exchange";
      readonly part: CheckedPart;
      readonly reason: ExchangeReason;
      readonly from: string;
      readonly to: string;
      /** Probability that the other one fits, and that this one does. */
      readonly probability: number;
      readonly fromProbability: number;
      readonly sizes: readonly SeenSize[];
    }
  | {
      readonly kind: "sits-right";
      readonly size: string;
      /** Left out where the chart does not size by a length of the back, or nothing is known of it. */
      readonly probability?: number;
    }
  | { readonly kind: "see-fitter"; readonly reason: FitterReason };

/** Where a check stands: plain data, never changed. */
export interface BodyCheckState {
  readonly setup: BodyCheckSetup;
  /** 1 for the first look, 2 for the one after the pack was adjusted. */
  readonly look: 1 | 2;
  /** What was seen in this look, in order. */
  readonly answers: readonly GivenAnswer[];
  /** The contradiction that was asked about in this look. */
  readonly questioned?: Contradiction;
  /** The items that are asked again because of it. */
  readonly takenBack?: readonly BodyCheckItemId[];
  readonly step: BodyCheckStep;
}
