import { InvalidArgumentError } from "@tapewise/outcome";
import type { FittedFamily } from "./family-model.ts";
import { type Fit, fitDistribution } from "./fit-distribution.ts";

/** A family in the order of a criterion. */
export interface RankedFit {
  readonly fit: Fit;
  /** How much worse than the best, in units of the criterion; up to 2 is hardly worse, above 10 is out. */
  readonly behind: number;
  /** exp(−behind / 2) over the sum of all: for AIC the weight of Akaike. */
  readonly weight: number;
}

/** What to choose by. */
export interface ChooseFamilyOptions {
  /** Which families; all four where it is left out. */
  readonly families?: readonly FittedFamily[];
  /** `aic` finds the best prediction, `bic` is slower to take further parameters; `aic` where it is left out. */
  readonly criterion?: "aic" | "bic";
  readonly weights?: readonly number[];
}

const FAMILIES: readonly FittedFamily[] = ["normal", "lognormal", "skew-normal", "mixture"];

/**
 * Fits several families to one sample and puts them in order, the best first. All see the same values, so their
 * likelihoods compare. That a family is the best of these does not say that it is good: see
 * {@link andersonDarling} and {@link qqPoints}.
 *
 * Lognormal is passed over where a value is not above 0. A fit at the end of its family takes part.
 *
 * @throws {@link InvalidArgumentError} as {@link fitDistribution} does, or when no family is left.
 *
 * @example
 * ```ts
 * import { chooseFamily } from "@tapewise/population";
 * const girths = [742, 781, 790, 801, 822, 848, 860, 905, 990, 1120];
 * const ranked = chooseFamily(girths, { families: ["normal", "lognormal"] });
 * ranked.map(({ fit }) => fit.family); // => ["lognormal", "normal"]
 * ranked[0]?.behind; // => 0
 * ```
 */
export function chooseFamily(
  values: readonly number[],
  options: ChooseFamilyOptions = {},
): readonly RankedFit[] {
  const { families = FAMILIES, criterion = "aic", weights } = options;
  const possible = families.filter((family) => family !== "lognormal" || values.every((value) => value > 0));
  if (possible.length === 0)
    throw new InvalidArgumentError("families", families, "at least one that can be fitted");
  const fits = possible
    .map((family) => fitDistribution(family, values, weights))
    .sort((a, b) => a[criterion] - b[criterion]);
  const best = fits[0]?.[criterion] ?? 0;
  const chances = fits.map((fit) => Math.exp((best - fit[criterion]) / 2));
  const sum = chances.reduce((total, chance) => total + chance, 0);
  return fits.map((fit, i) => ({ fit, behind: fit[criterion] - best, weight: (chances[i] ?? 0) / sum }));
}
