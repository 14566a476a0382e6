import { type ReadingSummary, sumErrors } from "./error-sum.ts";
import type { BudgetLine } from "./estimate.ts";
import type { MethodError } from "./method-error.ts";

/** An error budget and what it adds up to. */
export interface ErrorBudget {
  readonly lines: readonly BudgetLine[];
  readonly uncertaintyMm: number;
  readonly degreesOfFreedom: number;
  readonly lastingMm: number;
  readonly perReadingMm: number;
  readonly pooledMm: number;
  readonly pooledDegreesOfFreedom: number;
}

/**
 * The error budget of the mean of some readings: every cause with its standard uncertainty, the
 * combined standard uncertainty and the effective degrees of freedom.
 *
 * A pooled spread cannot be told apart by cause: it is shared among the causes as the method has it.
 */
export function budgetFor(summary: ReadingSummary, method: MethodError): ErrorBudget {
  const { count } = summary;
  const { isSampled, methodRepeat, repeat, pooled, together, roundingOfMean, ...sums } = sumErrors(
    summary,
    method,
  );

  const drafts: Draft[] = [];
  for (const part of method.repeat) {
    drafts.push({
      ...part,
      type: isSampled ? "A" : "B",
      variance: ((part.variance / methodRepeat) * repeat) / count,
      degreesOfFreedom: pooled.degreesOfFreedom,
      averagesOut: true,
      basis: isSampled ? `readings-and-${part.basis}` : part.basis,
    });
  }
  if (method.repeat.length === 0 && repeat > 0) {
    drafts.push({
      source: "repeatability",
      type: "A",
      distribution: "normal",
      variance: repeat / count,
      degreesOfFreedom: pooled.degreesOfFreedom,
      averagesOut: true,
      basis: "readings",
    });
  }
  if (roundingOfMean > 0) {
    drafts.push({
      source: "resolution",
      type: "B",
      distribution: "rectangular",
      variance: roundingOfMean,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      averagesOut: together < 0.5,
      basis: method.stepBasis,
    });
  }
  for (const part of method.lasting) drafts.push({ ...part, type: "B", averagesOut: false });

  const { uncertaintyMm, degreesOfFreedom, lastingMm, perReadingMm } = sums;
  return {
    lines: drafts.map((draft) => finishLine(draft, uncertaintyMm)),
    uncertaintyMm,
    degreesOfFreedom,
    lastingMm,
    perReadingMm,
    pooledMm: Math.sqrt(pooled.variance),
    pooledDegreesOfFreedom: pooled.degreesOfFreedom,
  };
}

type Draft = Omit<BudgetLine, "uncertaintyMm" | "share"> & { readonly variance: number };

function finishLine(draft: Draft, combinedMm: number): BudgetLine {
  const { source, type, distribution, variance, degreesOfFreedom, averagesOut, basis } = draft;
  const uncertaintyMm = Math.sqrt(variance);
  return {
    source,
    type,
    distribution,
    uncertaintyMm,
    degreesOfFreedom,
    // A line has a variance above 0, and so has the whole.
    share: (uncertaintyMm / combinedMm) ** 2,
    averagesOut,
    basis,
  };
}
