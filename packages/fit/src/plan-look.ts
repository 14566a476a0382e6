import { anticipateUnchecked, type Estimate } from "@tapewise/measurement";
import type { Belief } from "./belief.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import { lookAhead, type Prospect, type Standing } from "./look-ahead.ts";
import type { NextStepCode } from "./next-steps.ts";
import type { FitPolicy } from "./policy.ts";

/** A look at the body that is worth taking before a size is picked for good. */
export interface Look extends Prospect {
  readonly code: Extract<NextStepCode, "measure-again" | "measure-with-helper" | "measure-dimension">;
  /** What to read: a chart may say only "hip", a person needs to know where. */
  readonly dimension: Belief["dimension"];
  /** How many readings. */
  readonly count: number;
  /** The probability of the pick as it stands, which the gain adds to. */
  readonly nowProbability: number;
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
  standing: Standing,
  judged: readonly JudgedDimension[],
  policy: FitPolicy,
): Look | undefined {
  if (standing.pick.probability >= policy.sureProbability || policy.mostFurtherReadings < 1) return undefined;
  return judged
    .flatMap((dimension) => lookAt(dimension, standing, policy) ?? [])
    .toSorted((a, b) => b.gainProbability - a.gainProbability)[0];
}

function lookAt(
  { charted, belief }: JudgedDimension,
  standing: Standing,
  policy: FitPolicy,
): Look | undefined {
  const { dimension, estimate } = belief;
  const most = policy.mostFurtherReadings;
  const look = (code: Look["code"], count: number, afterSdMm: number): readonly Look[] => {
    const prospect = lookAhead(standing, charted, belief, afterSdMm);
    const isWorthwhile =
      prospect.changeProbability >= policy.changeProbability &&
      prospect.gainProbability >= policy.worthwhileGain;
    const nowProbability = standing.pick.probability;
    return isWorthwhile ? [{ code, dimension, count, nowProbability, ...prospect }] : [];
  };
  if (estimate === undefined) {
    return look("measure-dimension", most, withFreshReadings(belief, "self", most, USUAL_STEP_MM))[0];
  }
  const more = Array.from({ length: most }, (_, i) => i + 1).flatMap((count) =>
    look("measure-again", count, withMoreReadings(belief, estimate, count)),
  );
  const whole = more.at(-1)?.gainProbability ?? 0;
  const again = more.find((one) => one.gainProbability >= ENOUGH * whole);
  if (!isHelperAnOption(estimate)) return again;
  const [helped] = look(
    "measure-with-helper",
    most,
    withFreshReadings(belief, "helper", most, stepOf(estimate)),
  );
  return helped !== undefined && helped.gainProbability >= HELPER_ADVANTAGE * whole ? helped : again;
}

/** The step of a reading that is not yet taken: the millimetres of a tape. */
export const USUAL_STEP_MM = 1;

/** An error that somebody stated holds for their way of reading; what a helper would bring is not known. */
export function isHelperAnOption({ conditions, budget }: Estimate): boolean {
  return conditions.measuredBy === "self" && budget.every((line) => line.basis !== "stated");
}

export function stepOf({ readings }: Estimate): number {
  const [first, ...others] = readings.map(({ stepMm }) => stepMm);
  return others.reduce((least, step) => Math.min(least, step), first ?? USUAL_STEP_MM);
}

/** Uncertainty after further readings of the same kind: their mean replaces that of the readings so far. */
export function withMoreReadings(belief: Belief, estimate: Estimate, further: number): number {
  const count = estimate.readings.length + further;
  const after = estimate.lastingMm ** 2 + estimate.perReadingMm ** 2 / count;
  if (after === 0) return 0;
  return sdFromPrecision(1 / belief.sdMm ** 2 - 1 / estimate.uncertaintyMm ** 2 + 1 / after);
}

/**
 * Uncertainty after readings of another kind, which add to those so far: taken by somebody else, under the
 * person's own conditions in all other respects. The figures are those of the package's table of defaults: a
 * table of the caller's own is not known here.
 */
export function withFreshReadings(
  belief: Belief,
  measuredBy: "self" | "helper",
  count: number,
  stepMm: number,
): number {
  const fresh = anticipateUnchecked({
    dimension: belief.dimension,
    lengthMm: Math.max(1, belief.meanMm),
    count,
    stepMm,
    conditions: { ...belief.estimate?.conditions, measuredBy },
  });
  return sdFromPrecision(1 / belief.sdMm ** 2 + 1 / fresh ** 2);
}

/** Nothing is learned where no precision is left, say between two figures that are both exact. */
function sdFromPrecision(precision: number): number {
  return precision > 0 ? 1 / Math.sqrt(precision) : Number.POSITIVE_INFINITY;
}
