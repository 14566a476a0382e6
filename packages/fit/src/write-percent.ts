import { InvalidArgumentError } from "@tapewise/outcome";

/**
 * A probability as a percentage that does not claim too much: whole numbers, and words beyond 1 and 99. No
 * reading makes a size certain, so there is no 0 % and no 100 %.
 *
 * @throws {@link InvalidArgumentError} when it is not from 0 to 1.
 *
 * @example
 * ```ts
 * import { writePercent } from "@tapewise/fit";
 * writePercent(0.934); // => "93 %"
 * writePercent(0.9999); // => "more than 99 %"
 * ```
 */
export function writePercent(probability: number): string {
  if (!(probability >= 0 && probability <= 1)) {
    throw new InvalidArgumentError("probability", probability, "from 0 to 1");
  }
  if (probability < 0.01) return "less than 1 %";
  if (probability > 0.99) return "more than 99 %";
  return `${Math.round(probability * 100)} %`;
}
