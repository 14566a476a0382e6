import { anticipateUncertainty, type Estimate } from "@tapewise/measurement";
import type { Belief } from "./belief.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import { lookAhead, type Prospect } from "./look-again.ts";
import type { FitPolicy } from "./policy.ts";
import type { NextStepCode } from "./reasons.ts";
import type { SizeFit } from "./recommendation.ts";

/** A look at the body that is worth taking before a size is picked for good. */
export interface Look extends Prospect {
  readonly code: Extract<NextStepCode, "measure-again" | "measure-with-helper" | "measure-dimension">;
  readonly dimension: string;
  readonly count: number;
}

/** A part of the whole gain that is enough to stop at fewer readings. */
const ENOUGH = 0.8;
/** How much more a helper must bring before somebody is sent to find one. */
const HELPER_ADVANTAGE = 1.5;

/**
 * The look that is most worth taking, if any is: another reading or a few of the same kind, readings by
 * a helper where the lasting part of the error is what hurts, or a first reading of a dimension that
 * only the prior spoke for.
 */
export function planLook(
  fits: readonly SizeFit[],
  pick: SizeFit,
  judged: readonly JudgedDimension[],
  policy: FitPolicy,
): Look | undefined {
  if (pick.probability >= policy.sureProbability) return undefined;
  const looks = judged
    .flatMap((dimension) => looksAt(dimension, fits, pick, policy))
    .filter((look) => look.changeProbability >= policy.changeProbability)
    .filter((look) => look.gainProbability >= policy.worthwhileGain);
  return looks.toSorted((a, b) => b.gainProbability - a.gainProbability)[0];
}

function looksAt(
  { charted, belief }: JudgedDimension,
  fits: readonly SizeFit[],
  pick: SizeFit,
  policy: FitPolicy,
): readonly Look[] {
  const ahead = (afterSdMm: number) => lookAhead(fits, pick, charted, belief, afterSdMm);
  const { estimate } = belief;
  if (estimate === undefined) {
    const after = withFreshReadings(belief, "self", policy.mostFurtherReadings, 1);
    return [
      { code: "measure-dimension", dimension: charted, count: policy.mostFurtherReadings, ...ahead(after) },
    ];
  }
  const more = Array.from({ length: policy.mostFurtherReadings }, (_, i) => ({
    count: i + 1,
    ...ahead(withMoreReadings(belief, estimate, i + 1)),
  }));
  const most = more.at(-1);
  const enough = more.find((one) => one.gainProbability >= ENOUGH * (most?.gainProbability ?? 0));
  const again: readonly Look[] =
    enough === undefined ? [] : [{ code: "measure-again", dimension: charted, ...enough }];
  if (!isHelperAnOption(estimate)) return again;
  const count = policy.mostFurtherReadings;
  const helped = ahead(withFreshReadings(belief, "helper", count, stepOf(estimate)));
  return helped.gainProbability >= HELPER_ADVANTAGE * (most?.gainProbability ?? 0)
    ? [{ code: "measure-with-helper", dimension: charted, count, ...helped }]
    : again;
}

/** An error that somebody stated holds for their way of reading; what a helper would bring is not known. */
function isHelperAnOption(estimate: Estimate): boolean {
  return (
    estimate.conditions.measuredBy === "self" && estimate.budget.every((line) => line.basis !== "stated")
  );
}

function stepOf(estimate: Estimate): number {
  return Math.min(...new Set(estimate.readings.map((reading) => reading.stepMm)));
}

function withMoreReadings(belief: Belief, estimate: Estimate, further: number): number {
  const count = estimate.readings.length + further;
  const after = estimate.lastingMm ** 2 + estimate.perReadingMm ** 2 / count;
  if (after === 0) return 0;
  return sdFromPrecision(1 / belief.sdMm ** 2 - 1 / estimate.uncertaintyMm ** 2 + 1 / after);
}

function withFreshReadings(
  belief: Belief,
  measuredBy: "self" | "helper",
  count: number,
  stepMm: number,
): number {
  const fresh = anticipateUncertainty({
    dimension: belief.dimension,
    lengthMm: Math.max(1, belief.meanMm),
    count,
    stepMm,
    conditions: { tool: belief.estimate?.conditions.tool ?? "tape", measuredBy },
  });
  return sdFromPrecision(1 / belief.sdMm ** 2 + 1 / fresh ** 2);
}

function sdFromPrecision(precision: number): number {
  return precision > 0 ? 1 / Math.sqrt(precision) : Number.POSITIVE_INFINITY;
}
