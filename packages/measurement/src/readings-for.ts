import { InvalidArgumentError } from "@tapewise/outcome";
import type { Estimate } from "./estimate.ts";

/**
 * How many readings of the same kind, those already taken included, bring the standard uncertainty
 * down to a target: n = ⌈r² / (target² − l²)⌉ with the part r of one reading that averages out and the
 * part l that lasts. `undefined` where no number of readings can, because the lasting part alone is
 * too large: then find the bones afresh, or let a helper read.
 *
 * @param targetMm - wanted standard uncertainty in mm, above 0
 * @throws {@link InvalidArgumentError} for a target that is not a finite number above 0.
 *
 * @example
 * ```ts
 * import { readingsFor } from "@tapewise/measurement";
 * readingsFor({ perReadingMm: 8, lastingMm: 3 }, 5); // => 4
 * readingsFor({ perReadingMm: 8, lastingMm: 6 }, 5); // => undefined
 * ```
 */
export function readingsFor(
  estimate: Pick<Estimate, "perReadingMm" | "lastingMm">,
  targetMm: number,
): number | undefined {
  if (!(targetMm > 0 && Number.isFinite(targetMm))) {
    throw new InvalidArgumentError("targetMm", targetMm, "a finite number of mm above 0");
  }
  const room = targetMm ** 2 - estimate.lastingMm ** 2;
  if (room <= 0) return estimate.perReadingMm === 0 && room === 0 ? 1 : undefined;
  const count = estimate.perReadingMm ** 2 / room;
  // A quotient that is a whole number but for its last digits is that whole number.
  return Math.max(1, Math.ceil(count * (1 - 1e-12)));
}
