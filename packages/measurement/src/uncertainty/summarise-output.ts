/** An interval that holds a quantity with a stated probability. */
export interface CoverageInterval {
  readonly lower: number;
  readonly upper: number;
}

/** Simulated values in a few figures. */
export interface SimulatedOutput {
  /** Mean of the values (JCGM 101:2008, 7.6). */
  readonly value: number;
  /** Their standard deviation. */
  readonly uncertainty: number;
  /** The interval with equal tails (7.7.2). */
  readonly symmetric: CoverageInterval;
  /** The shortest interval (7.7.4). */
  readonly shortest: CoverageInterval;
}

/** Figures of values, which are sorted in place. There must be enough of them for the probability. */
export function summariseOutput(values: Float64Array, probability: number): SimulatedOutput {
  const count = values.length;
  let sum = 0;
  for (const value of values) sum += value;
  const mean = sum / count;
  let squares = 0;
  for (const value of values) squares += (value - mean) ** 2;
  values.sort();
  const inside = Math.min(count - 1, Math.floor(probability * count + 0.5));
  const most = count - inside;
  const from = Math.min(most, Math.max(1, Math.floor((most + 1) / 2))) - 1;
  let narrowest = 0;
  let width = Number.POSITIVE_INFINITY;
  for (let i = 0; i < most; i += 1) {
    const own = (values[i + inside] as number) - (values[i] as number);
    if (own < width) {
      width = own;
      narrowest = i;
    }
  }
  const intervalAt = (i: number): CoverageInterval => ({
    lower: values[i] as number,
    upper: values[i + inside] as number,
  });
  return {
    value: mean,
    uncertainty: Math.sqrt(squares / (count - 1)),
    symmetric: intervalAt(from),
    shortest: intervalAt(narrowest),
  };
}
