import { InvalidArgumentError } from "@tapewise/outcome";
import { bivariateNormalBox, normalIntervalProbability } from "@tapewise/statistics";
import { factor } from "../joint/gaussian.ts";
import type { BoxProbability } from "../joint/joint-model.ts";
import { latticeBox } from "./lattice-box.ts";
import { productBox } from "./product-box.ts";
import { simplifyBounds } from "./simplify-bounds.ts";
import { trivariateBox } from "./trivariate-box.ts";

/** What rounding costs where the probability is exact. */
const ROUNDING = 1e-15;

/**
 * The probability that standard normal variables with the given correlations all lie within their bounds,
 * which may be infinite. `error` tells how far off it may be.
 *
 * - One and two variables: exact to 10⁻¹⁵.
 * - Three: the bivariate probability given the third variable, integrated over it by adaptive 16-point
 *   Gauss–Legendre quadrature to 10⁻⁹ or better; `error` is the sum of the differences between a panel and its halves.
 * - From four on after A. Genz (1992, J. Comput. Graph. Statist. 1, 141–149): the box becomes a unit cube,
 *   the variables ordered after Gibson, Glasbey and Elston (1994) and the last two taken together in closed form
 *   (Genz and Trinh 2016). Up to six variables the cube is integrated by products of Gauss–Legendre rules with
 *   more and more nodes; `error` is the last change, or a tenth of the one before where that is more. Usually it is
 *   below 10⁻⁶; it is greater for six variables, open ends, or variables that determine each other.
 * - From seven on by averages over a Kronecker sequence (fractional parts of multiples of √2, √3, √5, …) with ten
 *   fixed shifts, until three standard errors over the shifts, which are the `error`, are below 10⁻⁵ or there are
 *   4,000 points of each. No chance is in it: the same box gives the same answer each time.
 *
 * @throws {@link InvalidArgumentError} when the bounds are not in order, or the correlations are none.
 *
 * @example
 * ```ts
 * import { normalBoxProbability } from "@tapewise/population";
 * const independent = [
 *   [1, 0, 0],
 *   [0, 1, 0],
 *   [0, 0, 1],
 * ];
 * const { probability } = normalBoxProbability([-1, -1, -1], [1, 1, 1], independent);
 * probability.toFixed(9); // => "0.318177639"
 * ```
 */
export function normalBoxProbability(
  lower: readonly number[],
  upper: readonly number[],
  correlation: readonly (readonly number[])[],
): BoxProbability {
  const size = lower.length;
  if (upper.length !== size) throw new InvalidArgumentError("upper", upper, `${size} upper bounds`);
  const reversed = lower.findIndex((bound, i) => !(bound <= (upper[i] ?? Number.NaN)));
  if (reversed >= 0) {
    throw new InvalidArgumentError(`upper[${reversed}]`, upper[reversed], `at least ${lower[reversed]}`);
  }
  const isSquare = correlation.length === size && correlation.every((row) => row.length === size);
  const isCorrelation =
    isSquare &&
    correlation.every((row, i) =>
      row.every((value, j) => value === correlation[j]?.[i] && (i !== j || value === 1)),
    );
  if (!isCorrelation || factor(correlation) === undefined) {
    throw new InvalidArgumentError("correlation", correlation, "a symmetric correlation matrix");
  }
  return normalBox(lower, upper, correlation);
}

/** The same without the checks. */
export function normalBox(
  lower: readonly number[],
  upper: readonly number[],
  correlation: readonly (readonly number[])[],
): BoxProbability {
  const bounds = simplifyBounds(lower, upper, correlation);
  if (bounds === undefined) return { probability: 0, error: 0 };
  const [l1 = 0, l2 = 0] = bounds.lower;
  const [u1 = 0, u2 = 0] = bounds.upper;
  switch (bounds.lower.length) {
    case 0:
      return { probability: 1, error: 0 };
    case 1:
      return { probability: normalIntervalProbability(l1, u1), error: ROUNDING };
    case 2:
      return {
        probability: bivariateNormalBox(l1, u1, l2, u2, bounds.correlation[0]?.[1] ?? 0),
        error: ROUNDING,
      };
    case 3:
      return trivariateBox(bounds);
    case 4:
    case 5:
    case 6:
      return productBox(bounds);
    default:
      return latticeBox(bounds);
  }
}
