import type { BudgetLine } from "./estimate.ts";
import { type MethodError, varianceOf } from "./method-error.ts";
import { poolSpread } from "./pool-spread.ts";
import { roundingCorrelation } from "./rounding-correlation.ts";
import { scatterBehind, shownVariance } from "./scatter-behind.ts";
import { combineUncertainties, type UncertaintyComponent } from "./welch-satterthwaite.ts";

/** What a set of readings brings to its error budget. */
export interface ReadingSummary {
  readonly count: number;
  /** Sample standard deviation in mm; absent for one reading. */
  readonly sampleMm?: number;
  /** The step in mm that the readings are rounded to; 0 for none. */
  readonly stepMm: number;
}

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
 * What changes from reading to reading is the sample spread pooled with the method's; the rounding
 * that the sample already holds is taken out of it, so that it counts once. A pooled spread cannot be
 * told apart by cause: it is shared among the causes as the method has it.
 */
export function budgetFor(summary: ReadingSummary, method: MethodError): ErrorBudget {
  const { count, stepMm } = summary;
  const rounding = stepMm ** 2 / 12;
  const methodRepeat = varianceOf(method.repeat);
  const pooled = poolSpread(
    { variance: shownVariance(methodRepeat, stepMm), degreesOfFreedom: method.repeatDegreesOfFreedom },
    { variance: (summary.sampleMm ?? 0) ** 2, degreesOfFreedom: count - 1 },
  );
  const isSampled = count > 1 && method.repeatDegreesOfFreedom < Number.POSITIVE_INFINITY;
  const repeat = isSampled ? scatterBehind(pooled.variance, stepMm) : methodRepeat;
  const together = stepMm === 0 ? 0 : roundingCorrelation(Math.sqrt(repeat), stepMm);
  const roundingOfMean = (rounding * (1 + (count - 1) * together)) / count;

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

  // The causes of the pooled spread rise and fall together, so they are one component here.
  const components: UncertaintyComponent[] = [
    { uncertainty: Math.sqrt(repeat / count), degreesOfFreedom: pooled.degreesOfFreedom },
    { uncertainty: Math.sqrt(roundingOfMean), degreesOfFreedom: Number.POSITIVE_INFINITY },
    ...method.lasting.map((part) => ({
      uncertainty: Math.sqrt(part.variance),
      degreesOfFreedom: part.degreesOfFreedom,
    })),
  ];
  const combined = combineUncertainties(components);
  return {
    lines: drafts.map((draft) => finishLine(draft, combined.uncertainty)),
    uncertaintyMm: combined.uncertainty,
    degreesOfFreedom: combined.degreesOfFreedom,
    lastingMm: Math.sqrt(varianceOf(method.lasting) + rounding * together),
    perReadingMm: Math.sqrt(repeat + rounding * (1 - together)),
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
