/** Nodes and weights of a quadrature rule on 0 to 1. */
export interface Rule {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Gauss–Legendre quadrature with `count` nodes on 0 to 1: the roots of the Legendre polynomial by Newton's
 * method from cos(π (i + 3/4) / (n + 1/2)), weights 2 / ((1 − x²) P′ₙ(x)²) (Abramowitz & Stegun 25.4.29).
 */
export function gaussLegendre(count: number): Rule {
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < count; i += 1) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step += 1) {
      let [value, before] = [1, 0];
      for (let j = 0; j < count; j += 1) {
        [value, before] = [((2 * j + 1) * x * value - j * before) / (j + 1), value];
      }
      slope = (count * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    nodes.push((1 - x) / 2);
    weights.push(1 / ((1 - x * x) * slope * slope));
  }
  return { nodes, weights };
}
