import { requireNotNegative, requirePositive } from "./require-number.ts";

/**
 * How strongly the rounding errors of two repeated readings go together, 0 to 1.
 *
 * When readings scatter by much less than the step that they are rounded to, all of them fall on the
 * same mark and averaging does not help; when they scatter by more, their rounding errors are as good
 * as independent. With a true length that may lie anywhere between two marks, the Fourier series of
 * the rounding error (a sawtooth) gives the correlation as (6/π²) Σ k⁻² exp(−(2πkσ/q)²), with scatter σ
 * and step q; for σ below a tenth of q that is 1 − (12/√π) σ/q + 12 (σ/q)². The variance of one rounding
 * error is q²/12 (GUM F.2.2.1).
 *
 * @param scatterMm - standard deviation of one reading before rounding, in mm, 0 or more
 * @param stepMm - the step in mm, above 0
 * @throws {@link InvalidArgumentError} for a negative scatter, a step that is not above 0, or either not finite.
 *
 * @example
 * ```ts
 * import { roundingCorrelation } from "@tapewise/measurement";
 * roundingCorrelation(8, 1) < 1e-12; // => true
 * Math.round(1000 * roundingCorrelation(0, 10)) / 1000; // => 1
 * ```
 */
export function roundingCorrelation(scatterMm: number, stepMm: number): number {
  requireNotNegative("scatterMm", scatterMm);
  requirePositive("stepMm", stepMm);
  const scatter = scatterMm / stepMm;
  // The same sum for little scatter, by Poisson's summation formula: what it leaves out is below 1e-17.
  if (scatter < LITTLE) return 1 - (12 / Math.sqrt(Math.PI)) * scatter + 12 * scatter ** 2;
  const rate = (2 * Math.PI * scatter) ** 2;
  let sum = 0;
  let term: number;
  let k = 1;
  do {
    term = Math.exp(-rate * k * k) / (k * k);
    sum += term;
    k += 1;
  } while (term > sum * 1e-17);
  return (6 / Math.PI ** 2) * sum;
}

/** From here on the series needs about a dozen terms at most. */
const LITTLE = 0.08;
