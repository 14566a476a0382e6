/** A figure with its standard error. */
export interface Measured {
  readonly value: number;
  readonly error: number;
}

/**
 * The ratio of two sums over people, with a standard error clustered by person (linearised:
 * √Σ(yᵢ − r xᵢ)² / Σxᵢ). All trials of one person count as one observation.
 */
export function clusteredRatio(above: Float64Array, below: Float64Array): Measured {
  const total = sum(below);
  const value = sum(above) / total;
  let squares = 0;
  for (let i = 0; i < above.length; i += 1) squares += ((above[i] ?? 0) - value * (below[i] ?? 0)) ** 2;
  return { value, error: Math.sqrt(squares) / total };
}

/** Person by person `a − b`. */
export function difference(a: Float64Array, b: Float64Array): Float64Array {
  return a.map((value, i) => value - (b[i] ?? 0));
}

/** Person by person the sum of several tallies. */
export function addUp(parts: readonly Float64Array[]): Float64Array {
  const total = new Float64Array(parts[0]?.length ?? 0);
  for (const part of parts) {
    for (let i = 0; i < total.length; i += 1) total[i] = (total[i] ?? 0) + (part[i] ?? 0);
  }
  return total;
}

function sum(values: Float64Array): number {
  return values.reduce((a, b) => a + b, 0);
}
