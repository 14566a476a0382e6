/**
 * x ln(x / m) + m − x for x ≥ 0 and m > 0, without cancellation when the two are close: the exponent of the
 * gamma and beta densities. C. Loader (2000), "Fast and accurate computation of binomial probabilities".
 */
export function deviance(x: number, m: number): number {
  if (x === 0) return m;
  const difference = x - m;
  if (Math.abs(difference) >= 0.1 * (x + m)) return x * logRatio(x, m) - difference;
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

/** ln(x / m), also where the quotient is too small or too large for a double. */
function logRatio(x: number, m: number): number {
  const ratio = x / m;
  return ratio > 0 && ratio < Number.POSITIVE_INFINITY ? Math.log(ratio) : Math.log(x) - Math.log(m);
}
