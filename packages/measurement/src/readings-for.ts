import { InvalidArgumentError } from "@tapewise/outcome";
import type { Estimate } from "./estimate.ts";

/**
 * How many readings of the same kind, those already taken included, bring the standard uncertainty
 * down to a target: n = ⌈r² / (target² − l²)⌉ with the part r of one reading that averages out and the
 * part l that lasts. `undefined` where no number of readings can, or none that can be counted, because
 * the lasting part alone is too large: then find the bones afresh, or let a helper read.
 *
 * @param targetMm - wanted standard uncertainty in mm, above 0
 * @throws {@link InvalidArgumentError} for a target that is not a finite number above 0, or a part below 0
 * or not finite.
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
  // Shares of the target, so that squares neither overflow nor vanish.
  const perReading = shareOf("perReadingMm", estimate.perReadingMm, targetMm);
  const lasting = shareOf("lastingMm", estimate.lastingMm, targetMm);
  const room = 1 - lasting ** 2;
  if (perReading === 0) return room >= -ROUNDING ? 1 : undefined;
  if (room <= ROUNDING) return undefined;
  // A quotient that is a whole number but for its last digits is that whole number.
  const count = Math.max(1, Math.ceil((perReading ** 2 / room) * (1 - ROUNDING)));
  return Number.isSafeInteger(count) ? count : undefined;
}

const ROUNDING = 1e-12;

function shareOf(argument: string, value: number, targetMm: number): number {
  if (!(value >= 0 && Number.isFinite(value))) {
    throw new InvalidArgumentError(argument, value, "a finite number of mm, 0 or more");
  }
  return value / targetMm;
}
