import { integrateFromZero, logGamma, normalCdf, normalQuantile } from "@tapewise/statistics";

/** Panels over the range of the scale, and standard deviations of it on each side: the rest is below 1e-20. */
const PANELS = 12;
const REACH = 13;
const MOST_STEPS = 60;

/**
 * P(T ≤ t) of the noncentral t distribution: the mean of Φ(t u − δ) over u = √(χ²/ν), by Gauss–Legendre panels
 * that are split where Φ turns.
 */
function noncentralTCdf(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const v = degreesOfFreedom;
  const height = Math.log(2) + (v / 2) * Math.log(v / 2) - logGamma(v / 2);
  const density = (u: number): number =>
    u > 0 ? Math.exp(height + (v - 1) * Math.log(u) - (v * u * u) / 2) : 0;
  const spread = REACH / Math.sqrt(2 * v);
  const low = Math.max(1 - spread, 0);
  const high = 1 + spread;
  const edges = Array.from({ length: PANELS + 1 }, (_, i) => low + ((high - low) * i) / PANELS);
  if (t !== 0) {
    for (let z = -8; z <= 8; z += 2) {
      const turn = (noncentrality + z) / t;
      if (turn > low && turn < high) edges.push(turn);
    }
  }
  edges.sort((a, b) => a - b);
  let sum = 0;
  for (let i = 1; i < edges.length; i += 1) {
    const from = edges[i - 1] ?? low;
    const width = (edges[i] ?? high) - from;
    if (width <= 0) continue;
    sum += integrateFromZero((x) => {
      const u = from + x;
      return normalCdf(t * u - noncentrality) * density(u);
    }, width);
  }
  return sum;
}

/**
 * The t below which a share `p` of the noncentral t distribution lies: secants in Φ⁻¹ of the distribution, which is
 * nearly a straight line, kept within a bracket.
 */
export function noncentralTQuantile(p: number, degreesOfFreedom: number, noncentrality: number): number {
  const goal = normalQuantile(p);
  const height = (t: number): number => {
    const share = noncentralTCdf(t, degreesOfFreedom, noncentrality);
    return normalQuantile(Math.min(Math.max(share, 1e-300), 1 - 2 ** -53)) - goal;
  };
  const scale = Math.sqrt(1 + noncentrality ** 2 / (2 * degreesOfFreedom));
  let low = noncentrality + goal * scale - scale;
  let high = noncentrality + goal * scale + scale;
  let below = height(low);
  let above = height(high);
  for (let reach = 2 * scale; below > 0; reach *= 2) {
    low -= reach;
    below = height(low);
  }
  for (let reach = 2 * scale; above < 0; reach *= 2) {
    high += reach;
    above = height(high);
  }
  // The last two points, whichever side they lie on.
  let [before, heightBefore, last, heightLast] = [low, below, high, above];
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const secant = last - (heightLast * (last - before)) / (heightLast - heightBefore);
    const t = secant > low && secant < high ? secant : (low + high) / 2;
    const here = height(t);
    if (here < 0) low = t;
    else high = t;
    if (Math.abs(here) < 1e-13 || Math.abs(t - last) < 1e-14 * Math.abs(t)) return t;
    [before, heightBefore, last, heightLast] = [last, heightLast, t, here];
  }
  return (low + high) / 2;
}
