import type { DimensionId } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { Millimetres } from "@tapewise/units";
import { menReference, womenReference } from "./data.ts";
import type { ReferencePopulation } from "./reference-population.ts";

/** Whom a prior is for. */
export interface ReferencePriorInput {
  /** Whose figures: those of the women or the men of the survey. */
  readonly cut: "women" | "men";
  /** The person's stature; without it the prior is that of the whole cut. */
  readonly statureMm?: Millimetres;
  /**
   * What readings along the spine show more than the straight torso length of the survey, in mm; 0 where it
   * is left out. `meanCurveSurplusMm` of @tapewise/landmarks is the best figure there is, and not a good one.
   */
  readonly curveSurplusMm?: number;
}

/**
 * What the reference survey says of torso length, back-waist length and shoulder breadth, for a cut
 * and, where it is given, a stature: the conditional normal distribution, mean μ + Σ₁₂ Σ₂₂⁻¹ (s − μₛ)
 * and covariance Σ₁₁ − Σ₁₂ Σ₂₂⁻¹ Σ₂₁. Stature counts as exact: 2 cm on it move the torso length by about 4 mm.
 *
 * The torso length of the survey is straight, and readings that follow the spine are about a centimetre
 * longer. Nothing is added for it unless `curveSurplusMm` says so, because nobody measured both on the same
 * people; the prior then pulls such readings down by a part of that centimetre.
 *
 * Girths are left out on purpose: those of a soldier sample say little of the general public. For a stature
 * beyond those of the people measured, the prior's caveat says so.
 *
 * @throws {@link InvalidArgumentError} for a stature that is not a finite number above 0 or a cut other than women or men.
 *
 * @example
 * ```ts
 * import { referencePrior } from "@tapewise/population";
 * import { millimetres } from "@tapewise/units";
 * const prior = referencePrior({ cut: "women", statureMm: millimetres(1710) });
 * prior.dimensions[0]; // => "torso-length"
 * prior.meanMm[0]?.toFixed(0); // => "417"
 * ```
 */
export function referencePrior(input: ReferencePriorInput): Prior {
  const population = populationOf(input.cut);
  const wanted = population.dimensions.filter((dimension) => dimension !== "stature");
  const { statureMm } = input;
  if (statureMm !== undefined && !(Number.isFinite(statureMm) && statureMm > 0)) {
    throw new InvalidArgumentError("statureMm", statureMm, "a finite stature above 0 mm");
  }
  const surplusMm = input.curveSurplusMm ?? 0;
  if (!Number.isFinite(surplusMm)) {
    throw new InvalidArgumentError("curveSurplusMm", surplusMm, "a finite number of millimetres");
  }
  const figures = figuresOf(population);
  const surplus = (dimension: DimensionId) => (dimension === "torso-length" ? surplusMm : 0);
  const variance = figures.covariance("stature", "stature");
  const slope = (dimension: DimensionId) => figures.covariance(dimension, "stature") / variance;
  const excess = statureMm === undefined ? 0 : statureMm - figures.mean("stature");
  return {
    label:
      statureMm === undefined
        ? population.label
        : `${population.label} ${Math.round(statureMm / 10)} cm tall`,
    source: population.source,
    caveat: caveatFor(population, statureMm),
    dimensions: wanted,
    meanMm: wanted.map(
      (dimension) => figures.mean(dimension) + slope(dimension) * excess + surplus(dimension),
    ),
    covarianceMm2: wanted.map((a) =>
      wanted.map((b) => {
        const known = statureMm === undefined ? 0 : slope(a) * slope(b) * variance;
        return figures.covariance(a, b) - known;
      }),
    ),
  };
}

function caveatFor(population: ReferencePopulation, statureMm: number | undefined): string {
  const { caveat, surveyedStatureMm } = population;
  const { from, to } = surveyedStatureMm;
  if (statureMm === undefined || (statureMm >= from && statureMm <= to)) return caveat;
  return (
    `${caveat} None of the people behind these figures was shorter than ${Math.floor(from / 10)} cm or taller ` +
    `than ${Math.ceil(to / 10)} cm: beyond that they are extrapolated.`
  );
}

function populationOf(cut: string): ReferencePopulation {
  if (cut === "women") return womenReference;
  if (cut === "men") return menReference;
  throw new InvalidArgumentError("cut", cut, "women or men");
}

function figuresOf(population: ReferencePopulation) {
  const position = (dimension: DimensionId) => {
    const index = population.dimensions.indexOf(dimension);
    if (index < 0) throw new InvalidArgumentError("dimension", dimension, "a dimension of the population");
    return index;
  };
  return {
    mean: (dimension: DimensionId) => population.meanMm[position(dimension)] ?? 0,
    covariance: (a: DimensionId, b: DimensionId) => {
      const i = position(a);
      const j = position(b);
      const correlation = population.correlation[i]?.[j] ?? 0;
      // The two deviations first, so that the matrix is symmetric to the last bit.
      return correlation * ((population.sdMm[i] ?? 0) * (population.sdMm[j] ?? 0));
    },
  };
}
