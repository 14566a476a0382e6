/** A polynomial by Horner's rule; the coefficients run from the highest power to the constant. */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}
