import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { Look } from "./plan-look.ts";
import type { DecidingPart, SizeFit, Verdict } from "./recommendation.ts";
import type { Settled } from "./settle.ts";
import type { PlainVerdict } from "./verdict.ts";

/** The choice of a size of one chart, before any words. */
export interface Choice {
  readonly chart: SizeChart;
  /** Every dimension that the chart states, for packs or for hip belts. */
  readonly charted: readonly ChartDimension[];
  /** Those that something is known of. */
  readonly known: readonly JudgedDimension[];
  /** Those of them that bind the size; the first is the main one. */
  readonly judged: readonly JudgedDimension[];
  readonly main: JudgedDimension;
  readonly fits: readonly SizeFit[];
  readonly unjudged: readonly string[];
  readonly settled: Settled;
  /** What the size of the pack amounts to; the hip belt has its own. */
  readonly plain: PlainVerdict;
  readonly belt?: PartChoice;
  readonly look?: Look;
  /** What pack, belt and further readings amount to together. */
  readonly verdict: Verdict;
  readonly decidedBy: DecidingPart;
  /** Whether a reading that binds the size of the pack or of its belt is questioned. */
  readonly isDoubted: boolean;
  readonly outside?: PlainVerdict["outside"];
}

/** The choice among the sizes of one part: of the pack, or of a hip belt that is sized apart. */
export interface PartChoice {
  readonly judged: readonly JudgedDimension[];
  readonly fits: readonly SizeFit[];
  readonly pick: SizeFit;
  readonly plain: PlainVerdict;
}
