import type { OutcomeEstimate, OutcomeRow } from "@tapewise/afterwards";
import { formBeliefs, type Person } from "@tapewise/fit";
import type { DimensionId } from "@tapewise/landmarks";

/** What was believed of every dimension that was read, to a millionth of a millimetre. */
export function estimatesOf({ estimates, prior }: Person): NonNullable<OutcomeRow["estimates"]> {
  const known: { [D in DimensionId]?: OutcomeEstimate } = {};
  for (const { dimension, meanMm, sdMm, degreesOfFreedom, estimate } of formBeliefs(estimates, prior).list) {
    if (estimate === undefined) continue;
    known[dimension] = {
      mm: rounded(meanMm),
      uncertaintyMm: rounded(sdMm),
      ...(Number.isFinite(degreesOfFreedom) ? { degreesOfFreedom: rounded(degreesOfFreedom) } : {}),
    };
  }
  return known;
}

function rounded(value: number): number {
  return Number(value.toFixed(6));
}
