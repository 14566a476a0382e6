import { type DimensionId, dimensionName } from "@tapewise/landmarks";
import { createIssue, InvalidArgumentError, type Issue, type IssuePath } from "@tapewise/outcome";
import { normalUpperTail } from "@tapewise/statistics";
import type { Millimetres } from "@tapewise/units";
import { populationIssues } from "../issues.ts";
import type { JointModel, Known } from "../joint/joint-model.ts";
import { placeOf } from "../joint/variable.ts";
import { requireConfidence, requirePositive } from "../require-argument.ts";

/** A reading to be held against what else is known. */
export interface QuestionedReading {
  readonly dimension: DimensionId;
  readonly mm: Millimetres;
  /** Standard uncertainty of the reading in mm; 0 where it is left out. */
  readonly uncertaintyMm?: number;
  /** Where the reading sits in the caller's data. */
  readonly path?: IssuePath;
}

/** How a reading goes with what else is known. */
export interface ReadingCheck {
  /** What would be usual, in mm, and how far people of that kind stray from it, the reading's error included. */
  readonly usualMm: number;
  readonly sdMm: number;
  /** How many standard deviations the reading is off, with its sign. */
  readonly score: number;
  /** The chance of a reading at least that far off, on either side. */
  readonly tailProbability: number;
  /** `reading-unlikely-given`, or nothing. */
  readonly issues: readonly Issue[];
}

/** A reading less likely than this is questioned. Assumption: one honest person in five hundred. */
const UNLIKELY = 0.002;

/**
 * Holds a reading against what a model expects of a person of whom other things are known: a torso of 520 mm is
 * usual, but not at a stature of 1560 mm. The reading is questioned, never altered.
 *
 * The tail is that of a normal distribution with mean and variance of the model given what is known, the
 * reading's own uncertainty added: (x − μ) / √(σ² + u²).
 *
 * Issue codes: `reading-unlikely-given`.
 *
 * @throws {@link InvalidArgumentError} when the model lacks a dimension, the reading's dimension is among the
 * known ones, or a figure is out of range.
 *
 * @example
 * ```ts
 * import { questionGiven, referencePopulation } from "@tapewise/population";
 * import { millimetres } from "@tapewise/units";
 * const women = referencePopulation("women");
 * const reading = { dimension: "torso-length" as const, mm: millimetres(520) };
 * const check = questionGiven(women, { stature: millimetres(1560) }, reading);
 * check.issues[0]?.code; // => "reading-unlikely-given"
 * check.usualMm.toFixed(0); // => "386"
 * ```
 */
export function questionGiven(
  model: JointModel,
  known: Known,
  reading: QuestionedReading,
  questionProbability: number = UNLIKELY,
): ReadingCheck {
  const { dimension, mm, uncertaintyMm = 0, path = [dimension] } = reading;
  requirePositive("reading.mm", mm);
  if (uncertaintyMm !== 0) requirePositive("reading.uncertaintyMm", uncertaintyMm);
  requireConfidence("questionProbability", questionProbability);
  if (known[dimension] !== undefined) {
    throw new InvalidArgumentError("known", dimension, "other dimensions than the reading's");
  }
  placeOf(model.variables, dimension);
  const isAnything = Object.values(known).some((value) => value !== undefined);
  const given = (isAnything ? model.conditional(known) : model).marginal([dimension]);
  const usualMm = given.mean[0] ?? 0;
  const sdMm = Math.hypot(Math.sqrt(given.covariance[0]?.[0] ?? 0), uncertaintyMm);
  const apart = mm - usualMm;
  // Where the known values leave no room at all, only the very value is possible.
  const score = sdMm > 0 ? apart / sdMm : apart === 0 ? 0 : Math.sign(apart) * Number.MAX_VALUE;
  const tailProbability = 2 * normalUpperTail(Math.abs(score));
  if (tailProbability >= questionProbability) return { usualMm, sdMm, score, tailProbability, issues: [] };
  const facts = {
    dimension: dimensionName(dimension),
    label: given.about.label,
    side: apart < 0 ? "below" : "above",
    differenceMm: Math.round(Math.abs(apart)),
    usualMm: Math.round(usualMm),
    sdMm: Math.round(sdMm),
  };
  const issue = createIssue(populationIssues, "reading-unlikely-given", { path, received: mm, facts });
  return { usualMm, sdMm, score, tailProbability, issues: [issue] };
}
