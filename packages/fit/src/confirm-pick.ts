import type { Choice, PartChoice } from "./choice.ts";
import type { NextStepCode } from "./next-steps.ts";
import type { FitPolicy } from "./policy.ts";
import type { PlainReason } from "./reason.ts";

/**
 * The reading to take again where a pick is not sure and no planned look would help: that of the dimension
 * which speaks least for the pick. One that nobody has read is asked for in any case.
 */
export function confirmPick(choice: Choice, policy: FitPolicy): readonly PlainReason<NextStepCode>[] {
  const isMeasured = choice.look !== undefined || choice.isDoubted || policy.mostFurtherReadings < 1;
  if (isMeasured) return [];
  const { judged, fits, plain, belt } = choice;
  const parts = [{ judged, fits, plain, pick: choice.settled.pick }, ...(belt === undefined ? [] : [belt])];
  return parts.flatMap((part) => confirmPart(part, policy));
}

function confirmPart(
  { judged, plain, pick }: PartChoice,
  policy: FitPolicy,
): readonly PlainReason<NextStepCode>[] {
  const { size, probability: fitProbability, dimensions } = pick;
  const isOpen = fitProbability >= policy.hopelessProbability && fitProbability < policy.sureProbability;
  if (!isOpen || plain.verdict === "outside-the-range") return [];
  const weakest = dimensions.reduce((a, b) => (b.probability < a.probability ? b : a));
  const belief = judged.find(({ charted }) => charted === weakest.dimension)?.belief;
  if (belief?.estimate === undefined) return [];
  return [{ code: "confirm-reading", facts: { dimension: belief.dimension, size, fitProbability } }];
}
