import { requireDegrees, requireNotNegative } from "./require-number.ts";

/** One independent component of a combined uncertainty. */
export interface UncertaintyComponent {
  /** Standard uncertainty that the component contributes, in the unit of the result. */
  readonly uncertainty: number;
  /** Its degrees of freedom, above 0; `Infinity` where it counts as known. */
  readonly degreesOfFreedom: number;
}

/** What independent components amount to. */
export interface CombinedUncertainty {
  readonly uncertainty: number;
  readonly degreesOfFreedom: number;
}

/**
 * Combines independent components: the root of the sum of squares (GUM 5.1.2), with effective degrees
 * of freedom by the Welch–Satterthwaite formula ν = u⁴ / Σ(uᵢ⁴/νᵢ) (GUM G.4.1, equation G.2b). The
 * result is not truncated to a whole number.
 *
 * @throws {@link InvalidArgumentError} when a component is negative or not finite, or has no degrees of freedom.
 *
 * @example
 * ```ts
 * import { combineUncertainties } from "@tapewise/measurement";
 * combineUncertainties([
 *   { uncertainty: 3, degreesOfFreedom: Infinity },
 *   { uncertainty: 4, degreesOfFreedom: Infinity },
 * ]).uncertainty; // => 5
 * ```
 */
export function combineUncertainties(components: readonly UncertaintyComponent[]): CombinedUncertainty {
  let largest = 0;
  for (const { uncertainty, degreesOfFreedom } of components) {
    requireNotNegative("uncertainty", uncertainty);
    requireDegrees("degreesOfFreedom", degreesOfFreedom);
    largest = Math.max(largest, uncertainty);
  }
  if (largest === 0) return { uncertainty: 0, degreesOfFreedom: Number.POSITIVE_INFINITY };
  // Scaled by the largest, so that fourth powers neither overflow nor vanish.
  let variance = 0;
  let spread = 0;
  for (const { uncertainty, degreesOfFreedom } of components) {
    const square = (uncertainty / largest) ** 2;
    variance += square;
    spread += square ** 2 / degreesOfFreedom;
  }
  return {
    uncertainty: largest * Math.sqrt(variance),
    degreesOfFreedom: spread === 0 ? Number.POSITIVE_INFINITY : variance ** 2 / spread,
  };
}
