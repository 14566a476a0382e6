import { InvalidArgumentError } from "@tapewise/outcome";
import type { Moments } from "./moments.ts";

/**
 * The moments of two samples taken together. Order and grouping do not matter but for rounding.
 *
 * The update of T. F. Chan, G. H. Golub & R. J. LeVeque (1983), The American Statistician 37, 242–247.
 *
 * @throws {@link InvalidArgumentError} when one of them counts no value or their squares are beyond the range
 * of doubles.
 *
 * @example
 * ```ts
 * import { mergeMoments, momentsOf } from "@tapewise/statistics";
 * mergeMoments(momentsOf([430, 434]), momentsOf([438]));
 * // => { n: 3, mean: 434, squares: 32, min: 430, max: 438 }
 * ```
 */
export function mergeMoments(a: Moments, b: Moments): Moments {
  requireCounted("a", a);
  requireCounted("b", b);
  const n = a.n + b.n;
  const difference = b.mean - a.mean;
  const mean = a.mean + difference * (b.n / n);
  const squares = a.squares + b.squares + difference * difference * ((a.n / n) * b.n);
  if (!Number.isFinite(squares)) {
    throw new InvalidArgumentError("squares", squares, "a number that a double can hold");
  }
  return { n, mean, squares, min: Math.min(a.min, b.min), max: Math.max(a.max, b.max) };
}

function requireCounted(argument: string, moments: Moments): void {
  if (!(Number.isSafeInteger(moments.n) && moments.n > 0)) {
    throw new InvalidArgumentError(`${argument}.n`, moments.n, "a whole number above zero");
  }
}
