import type { DimensionKind } from "@tapewise/landmarks";
import type { KnownConditions } from "./conditions.ts";
import type { ErrorDefaults } from "./error-defaults.ts";
import type { BudgetLine, BudgetSource } from "./estimate.ts";
import { poolSpread } from "./pool-spread.ts";
import { roundingCorrelation } from "./rounding-correlation.ts";
import type { StatedError } from "./stated-error.ts";
import { combineUncertainties, type UncertaintyComponent } from "./welch-satterthwaite.ts";

/** What a set of readings brings to its error budget. */
export interface ReadingSummary {
  readonly count: number;
  readonly meanMm: number;
  /** Sample standard deviation in mm; absent for one reading. */
  readonly sampleMm?: number;
  /** The step in mm that the readings are rounded to. */
  readonly stepMm: number;
}

/** How one reading errs, cause by cause: what a method amounts to before anybody reads. */
export interface MethodError {
  /** Variances, in mm², of what changes from reading to reading. */
  readonly repeat: readonly MethodPart[];
  /** Variances, in mm², of what stays the same in every reading. */
  readonly lasting: readonly MethodPart[];
  /** Degrees of freedom of the repeat spread. */
  readonly repeatDegreesOfFreedom: number;
}

/** One cause of error with its variance in mm². */
export interface MethodPart {
  readonly source: BudgetSource;
  readonly variance: number;
  readonly degreesOfFreedom: number;
  readonly distribution: BudgetLine["distribution"];
  readonly basis: BudgetLine["basis"];
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

/** The error of a method from the table of defaults. */
export function methodFromDefaults(
  kind: DimensionKind,
  lengthMm: number,
  conditions: KnownConditions,
  defaults: ErrorDefaults,
): MethodError {
  const hand = defaults.hands[kind][conditions.measuredBy];
  const tool = defaults.tools[conditions.tool];
  const part = (source: BudgetSource, sdMm: number, distribution: BudgetLine["distribution"] = "normal") => ({
    source,
    variance: sdMm ** 2,
    degreesOfFreedom: defaults.degreesOfFreedom,
    distribution,
    basis: defaults.basis,
  });
  const joints =
    conditions.tool === "short-rule" ? Math.max(0, Math.ceil(lengthMm / conditions.ruleLengthMm) - 1) : 0;
  const finding = part("landmark-finding", hand.findingMm);
  const repeat = [
    part("repeatability", hand.handlingMm),
    part("cord-transfer", tool.transferMm * Math.SQRT2),
    part("rule-joints", tool.jointMm * Math.sqrt(joints)),
  ];
  const lasting = [
    part("method-bias", hand.lastingMm),
    part("tool-scale", (tool.scaleHalfWidth * lengthMm) / Math.sqrt(3), "rectangular"),
  ];
  return {
    repeat: (conditions.landmarksFoundAfresh ? [...repeat, finding] : repeat).filter(isPresent),
    lasting: (conditions.landmarksFoundAfresh ? lasting : [...lasting, finding]).filter(isPresent),
    repeatDegreesOfFreedom: defaults.degreesOfFreedom,
  };
}

/** The error of a method that somebody has studied and states. */
export function methodFromStatement(error: StatedError): MethodError {
  const part = (source: BudgetSource, sdMm: number): MethodPart => ({
    source,
    variance: sdMm ** 2,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    distribution: "normal",
    basis: "stated",
  });
  return {
    repeat: [part("repeatability", error.repeatMm)].filter(isPresent),
    lasting: [part("stated-bias", error.biasMm)].filter(isPresent),
    repeatDegreesOfFreedom: Number.POSITIVE_INFINITY,
  };
}

function isPresent(part: MethodPart): boolean {
  return part.variance > 0;
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
  const rounding = stepMm === 0 ? 0 : stepMm ** 2 / 12;
  const methodRepeat = method.repeat.reduce((sum, part) => sum + part.variance, 0);
  const pooled = poolSpread(
    { variance: methodRepeat + rounding, degreesOfFreedom: method.repeatDegreesOfFreedom },
    { variance: (summary.sampleMm ?? 0) ** 2, degreesOfFreedom: count - 1 },
  );
  const repeat = Math.max(0, pooled.variance - rounding);
  const together = stepMm === 0 ? 0 : roundingCorrelation(Math.sqrt(repeat), stepMm);
  const roundingOfMean = (rounding * (1 + (count - 1) * together)) / count;

  const drafts: Draft[] = [];
  for (const part of method.repeat) {
    drafts.push({
      ...part,
      type: "A",
      variance: ((part.variance / methodRepeat) * repeat) / count,
      degreesOfFreedom: pooled.degreesOfFreedom,
      averagesOut: true,
      basis: count > 1 && part.basis !== "stated" ? "readings" : part.basis,
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
      basis: "readings",
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
  const lasting = method.lasting.reduce((sum, part) => sum + part.variance, 0);
  return {
    lines: drafts.map((draft) => finishLine(draft, combined.uncertainty)),
    uncertaintyMm: combined.uncertainty,
    degreesOfFreedom: combined.degreesOfFreedom,
    lastingMm: Math.sqrt(lasting + rounding * together),
    perReadingMm: Math.sqrt(repeat + rounding * (1 - together)),
    pooledMm: Math.sqrt(pooled.variance),
    pooledDegreesOfFreedom: pooled.degreesOfFreedom,
  };
}

type Draft = Omit<BudgetLine, "uncertaintyMm" | "share"> & { readonly variance: number };

function finishLine(draft: Draft, combinedMm: number): BudgetLine {
  const { source, type, distribution, variance, degreesOfFreedom, averagesOut, basis } = draft;
  return {
    source,
    type,
    distribution,
    uncertaintyMm: Math.sqrt(variance),
    degreesOfFreedom,
    share: combinedMm === 0 ? 0 : variance / combinedMm ** 2,
    averagesOut,
    basis,
  };
}
