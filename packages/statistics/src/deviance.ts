/**
 * x ln(x / m) + m − x for x ≥ 0 and m > 0, without cancellation when the two are close: the exponent of the
 * gamma and beta densities. C. Loader (2000), "Fast and accurate computation of binomial probabilities".
 */
export function deviance(x: number, m: number): number {
  if (x === 0) return m;
  const difference = x - m;
  if (Math.abs(difference) >= 0.1 * (x + m)) return x * Math.log(x / m) - difference;
  const v = difference / (x + m);
  const square = v * v;
  let sum = difference * v;
  let power = 2 * x * v;
  for (let j = 3; ; j += 2) {
    power *= square;
    const next = sum + power / j;
    if (next === sum) return sum;
    sum = next;
  }
}
