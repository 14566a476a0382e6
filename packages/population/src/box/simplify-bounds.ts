import { entry, pick } from "../joint/gaussian.ts";
import type { Bounds } from "./bounds.ts";

/** From this correlation on two variables count as one. */
const SAME = 1 - 1e-12;

/**
 * The same box with fewer variables: those without bounds go, and of two that are perfectly correlated one
 * stays, within the bounds of both. `undefined` when nothing is left between them.
 */
export function simplifyBounds(
  lower: readonly number[],
  upper: readonly number[],
  correlation: readonly (readonly number[])[],
): Bounds | undefined {
  const from = [...lower];
  const to = [...upper];
  const kept: number[] = [];
  for (let i = 0; i < lower.length; i += 1) {
    if (from[i] === Number.NEGATIVE_INFINITY && to[i] === Number.POSITIVE_INFINITY) continue;
    const twin = kept.find((k) => Math.abs(entry(correlation, k, i)) >= SAME);
    if (twin === undefined) {
      kept.push(i);
      continue;
    }
    const alike = entry(correlation, twin, i) > 0;
    const [low = 0, high = 0] = alike ? [from[i], to[i]] : [-(to[i] ?? 0), -(from[i] ?? 0)];
    from[twin] = Math.max(from[twin] ?? low, low);
    to[twin] = Math.min(to[twin] ?? high, high);
  }
  if (kept.some((i) => !((from[i] ?? 0) < (to[i] ?? 0)))) return undefined;
  return {
    lower: kept.map((i) => from[i] ?? 0),
    upper: kept.map((i) => to[i] ?? 0),
    correlation: pick(correlation, kept),
  };
}
