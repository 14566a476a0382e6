/**
 * The continued fraction a₁/(b₁ + a₂/(b₂ + …)) by Steed's forward method, to the last digit.
 *
 * Steed's increments shrink to nothing even where rounding makes the ratios of Lentz's method flicker
 * about one, so the loop ends for every fraction that converges.
 */
export function continuedFraction(
  numerator: (n: number) => number,
  denominator: (n: number) => number,
): number {
  let inverse = 1 / denominator(1);
  let increment = numerator(1) * inverse;
  let value = increment;
  for (let n = 2; Math.abs(increment) > Math.abs(value) * 1e-17; n += 1) {
    const b = denominator(n);
    inverse = 1 / (b + numerator(n) * inverse);
    increment *= b * inverse - 1;
    value += increment;
  }
  return value;
}
