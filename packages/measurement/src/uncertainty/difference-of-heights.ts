import { InvalidArgumentError } from "@tapewise/outcome";
import type { Propagation } from "./propagate-uncertainty.ts";
import { inputOf, linear, type SharedScale, type UncertainReading } from "./sum-of-joined.ts";

/**
 * The difference of two heights that were read with one tool, in mm: such as that of C7 less that of the
 * iliac crests. Their scale error is one and the same, so that only the part for the difference is left of it;
 * everything else is taken to be independent (GUM 5.1.2, 5.2.2).
 *
 * @throws {@link InvalidArgumentError} when `upper` is not the greater, or a figure is not finite or out of range.
 *
 * @example
 * ```ts
 * import { differenceOfHeights } from "@tapewise/measurement";
 * const torso = differenceOfHeights(
 *   { mm: 1440, uncertaintyMm: 3 },
 *   { mm: 1015, uncertaintyMm: 4 },
 *   { scaleHalfWidth: 0.003 },
 * );
 * [torso.value, torso.uncertainty.toFixed(2)]; // => [425, "5.05"]
 * ```
 */
export function differenceOfHeights(
  upper: UncertainReading,
  lower: UncertainReading,
  options: SharedScale = {},
): Propagation {
  const mm = upper.mm - lower.mm;
  if (!(mm > 0)) throw new InvalidArgumentError("upper.mm", upper.mm, `a height above ${lower.mm} mm`);
  const parts = [inputOf("upper", upper), inputOf("lower", lower)];
  return linear(parts, (i) => (i === 0 ? 1 : -1), options.scaleHalfWidth ?? 0, mm);
}
