import type { Random } from "@tapewise/statistics";

/**
 * A random number with the chi-square distribution, by the squeeze of G. Marsaglia & W. W. Tsang (2000), ACM
 * Transactions on Mathematical Software 26, 363–372.
 */
export function drawChiSquare(random: Random, degreesOfFreedom: number): number {
  const shape = degreesOfFreedom / 2;
  if (shape < 1) return drawChiSquare(random, degreesOfFreedom + 2) * random.uniform() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    if (Math.log(random.uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return 2 * d * v;
  }
}
