import type { SizeChart } from "@tapewise/charts";
import type { BeltPick } from "./pick-belt.ts";
import type { Picked } from "./pick-from.ts";
import type { Look } from "./plan-look.ts";
import type { DecidingPart, Verdict } from "./recommendation.ts";
import type { PlainVerdict } from "./verdict.ts";

/** The choice of a size of one chart, before any words. */
export interface Choice extends Omit<Picked, "belt"> {
  readonly chart: SizeChart;
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
export interface PartChoice extends BeltPick {
  readonly plain: PlainVerdict;
}
