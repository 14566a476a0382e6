import { InvalidArgumentError } from "@tapewise/outcome";

/** Refuses a unit that results are not told in. */
export function requireUnit(unit: unknown): void {
  if (unit !== "cm" && unit !== "in") throw new InvalidArgumentError("unit", unit, '"cm" or "in"');
}
