import type { Choice } from "./choice.ts";
import { explainChart } from "./explain-chart.ts";
import { explainMisfit } from "./explain-misfit.ts";
import { explainNext } from "./explain-next.ts";
import { explainPick } from "./explain-pick.ts";
import type { Inquiry } from "./inquiry.ts";
import { type NextStepCode, nextStepTexts } from "./next-steps.ts";
import type { Reason } from "./reason.ts";
import { type ReasonCode, reasonTexts } from "./reasons.ts";
import { writeReason } from "./write-reason.ts";

/** The reasons of a choice and what to do next, in words. */
export interface Explanation {
  readonly reasons: readonly Reason<ReasonCode>[];
  readonly next: readonly Reason<NextStepCode>[];
}

/** Puts a choice into words: why this size, where it falls short, what the chart leaves open, what to do. */
export function explain(choice: Choice, inquiry: Inquiry): Explanation {
  const reasons = [
    ...explainPick(choice, inquiry),
    ...explainMisfit(choice),
    ...explainChart(choice, inquiry),
  ];
  const next = explainNext(choice, inquiry);
  return {
    reasons: reasons.map((reason) => writeReason(reasonTexts, reason, inquiry.unit)),
    next: next.map((step) => writeReason(nextStepTexts, step, inquiry.unit)),
  };
}
