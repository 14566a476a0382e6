import type { DimensionKind } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { Conditions } from "./conditions.ts";
import type { ErrorDefaults } from "./error-defaults.ts";
import type { BudgetLine, BudgetSource, MethodBasis } from "./estimate.ts";
import type { StatedError } from "./stated-error.ts";

/** How one reading errs, cause by cause: what a method amounts to before anybody reads. */
export interface MethodError {
  /** What changes from reading to reading. */
  readonly repeat: readonly MethodPart[];
  /** What stays the same in every reading. */
  readonly lasting: readonly MethodPart[];
  /** Degrees of freedom of the repeat spread. */
  readonly repeatDegreesOfFreedom: number;
  /** Where the step that readings are rounded to comes from. */
  readonly stepBasis: "readings" | "stated";
}

/** One cause of error with its variance in mm². */
export interface MethodPart {
  readonly source: BudgetSource;
  readonly variance: number;
  readonly degreesOfFreedom: number;
  readonly distribution: BudgetLine["distribution"];
  readonly basis: MethodBasis;
}

/**
 * The error of a method from the table of defaults.
 *
 * @throws {@link InvalidArgumentError} for a tool or a measurer that the table does not have.
 */
export function methodFromDefaults(
  kind: DimensionKind,
  lengthMm: number,
  conditions: Required<Conditions>,
  defaults: ErrorDefaults,
): MethodError {
  requireKey("tool", conditions.tool, defaults.tools);
  requireKey("measuredBy", conditions.measuredBy, defaults.hands[kind]);
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
    stepBasis: "readings",
  };
}

function requireKey(argument: string, key: string, table: object): void {
  if (!Object.hasOwn(table, key)) {
    throw new InvalidArgumentError(argument, key, `one of ${Object.keys(table).join(", ")}`);
  }
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
    stepBasis: "stated",
  };
}

/** The standard deviation of one reading, in mm, that changes from reading to reading. */
export function repeatMm(method: MethodError): number {
  return Math.sqrt(varianceOf(method.repeat));
}

/** The variance, in mm², of independent causes together. */
export function varianceOf(parts: readonly MethodPart[]): number {
  return parts.reduce((sum, part) => sum + part.variance, 0);
}

function isPresent(part: MethodPart): boolean {
  return part.variance > 0;
}
