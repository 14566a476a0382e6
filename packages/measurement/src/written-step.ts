import { describeUnit, type LengthReading } from "@tapewise/units";

/**
 * The step, in mm, that readings are written to. Whoever writes 43.2 cm and 44 cm reads to the
 * millimetre and drops a zero, so the finest step counts; but 17 in beside 43.2 cm was read on the other
 * side of the tape, so of the two sides the coarser one counts.
 */
export function writtenStep(readings: readonly LengthReading[]): number {
  const finest = new Map<string, number>();
  for (const { unit, stepMm } of readings) {
    const { system } = describeUnit(unit);
    finest.set(system, Math.min(stepMm, finest.get(system) ?? Number.POSITIVE_INFINITY));
  }
  return Math.max(...finest.values());
}
