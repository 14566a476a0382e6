import { logGamma } from "@tapewise/statistics";

/** The probabilities of 0 to `trials` hits. */
function binomialProbabilities(trials: number, chance: number): Float64Array {
  const out = new Float64Array(trials + 1);
  if (chance <= 0 || chance >= 1) {
    out[chance <= 0 ? 0 : trials] = 1;
    return out;
  }
  const whole = logGamma(trials + 1);
  const [hit, miss] = [Math.log(chance), Math.log1p(-chance)];
  for (let k = 0; k <= trials; k += 1) {
    out[k] = Math.exp(whole - logGamma(k + 1) - logGamma(trials - k + 1) + k * hit + (trials - k) * miss);
  }
  return out;
}

/** The least number of hits that is not exceeded with at least the stated chance. */
export function binomialQuantile(trials: number, chance: number, least: number): number {
  const probabilities = binomialProbabilities(trials, chance);
  let [sum, k] = [0, 0];
  for (; k < trials; k += 1) {
    sum += probabilities[k] ?? 0;
    if (sum >= least) break;
  }
  return k;
}
