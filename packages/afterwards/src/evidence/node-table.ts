/**
 * Nodes along the offset and along the logarithm of the width: so many that between them the logarithm of one
 * outcome's likelihood is off by some 10⁻⁴ to 10⁻³ as a root mean square, with either sign.
 */
const OFFSETS = 29;
const WIDTHS = 11;

/** How many numbers a table of nodes holds; the offset runs fastest. */
export const NODES: number = OFFSETS * WIDTHS;

/** The place of offset 0 and factor 1: the middle one of an odd number of nodes. */
export const CENTRE: number = (NODES - 1) / 2;

/**
 * Chebyshev points of the second kind on [−1, 1], for offset and width. Through values at them a smooth
 * function is known everywhere between (L. N. Trefethen, 2013, Approximation Theory and Approximation Practice,
 * chapters 2 and 5); they mirror each other to the last bit.
 */
export const offsetNodes: Float64Array = Float64Array.from({ length: OFFSETS }, (_, i) => node(i, OFFSETS));
/** The same for the logarithm of the width factor. */
export const widthNodes: Float64Array = Float64Array.from({ length: WIDTHS }, (_, i) => node(i, WIDTHS));

function node(i: number, count: number): number {
  return Math.sin((Math.PI * (2 * i - (count - 1))) / (2 * (count - 1)));
}

/**
 * Values at `points` of [−1, 1] from those at nodes: one row a point (barycentric formula, J.-P. Berrut &
 * L. N. Trefethen, SIAM Review 46, 2004, eq. 4.2 with weights 5.4).
 */
export function interpolationRows(nodes: Float64Array, points: Float64Array): readonly Float64Array[] {
  const last = nodes.length - 1;
  return Array.from(points, (x) => {
    const hit = nodes.indexOf(x);
    if (hit >= 0) return Float64Array.from(nodes, (_, k) => (k === hit ? 1 : 0));
    const row = Float64Array.from(nodes, (at, k) => {
      const weight = (k % 2 === 0 ? 1 : -1) * (k === 0 || k === last ? 0.5 : 1);
      return weight / (x - at);
    });
    const total = row.reduce((a, b) => a + b, 0);
    return row.map((value) => value / total);
  });
}
