import type { BoxProbability } from "../joint/joint-model.ts";
import type { Bounds } from "./bounds.ts";
import { gaussLegendre } from "./gauss-legendre.ts";
import { createIntegrand, type Integrand } from "./integrand.ts";
import { orderBounds } from "./order-bounds.ts";

const TOLERANCE = 1e-7;
/** How many nodes an axis, for boxes of four, five and six variables: at most about 22,000 nodes in all. */
const LEVELS: Readonly<Record<number, readonly number[]>> = {
  4: [8, 12, 18, 27, 40, 60],
  5: [6, 9, 13, 19, 28],
  6: [5, 7, 9, 12],
};

/** P of a box of four to six variables by products of Gauss–Legendre rules; see `normalBoxProbability`. */
export function productBox(bounds: Bounds): BoxProbability {
  const integrand = createIntegrand(orderBounds(bounds));
  const [first = 0, ...others] = LEVELS[bounds.lower.length] ?? [];
  let probability = meanOver(integrand, first);
  let change = Number.POSITIVE_INFINITY;
  let error = change;
  for (const count of others) {
    const next = meanOver(integrand, count);
    const latest = Math.abs(next - probability);
    // One small change may be a coincidence of two answers that are both off.
    error = Math.max(latest, change / 10, 1e-15);
    change = latest;
    probability = next;
    if (error <= TOLERANCE) break;
  }
  return { probability: Math.min(Math.max(probability, 0), 1), error };
}

function meanOver({ dimensions, value, isOpen }: Integrand, count: number): number {
  const plain = gaussLegendre(count);
  // An axis of a variable with an open end is bent, so that its ends weigh nothing: the quantile has no
  // slope to speak of there, and the rule would suffer from it.
  const bent = {
    nodes: plain.nodes.map((t) => t ** 3 * (10 - 15 * t + 6 * t * t)),
    weights: plain.weights.map(
      (weight, k) => weight * 30 * ((plain.nodes[k] ?? 0) * (1 - (plain.nodes[k] ?? 0))) ** 2,
    ),
  };
  const point = new Float64Array(dimensions);
  const along = (axis: number): number => {
    if (axis === dimensions) return value(point);
    const { nodes, weights } = isOpen[axis] ? bent : plain;
    let sum = 0;
    for (let k = 0; k < count; k += 1) {
      point[axis] = nodes[k] ?? 0;
      sum += (weights[k] ?? 0) * along(axis + 1);
    }
    return sum;
  };
  return along(0);
}
