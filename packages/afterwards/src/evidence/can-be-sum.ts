import { UNIT } from "./log-likelihood.ts";

/**
 * Whether a table can be the sum of so many outcomes. Whatever an outcome says, its probability lies between a third of
 * the chance of a slip and that plus the chance of none, at every node; a unit for each outcome is left for rounding.
 */
export function canBeSum(units: Float64Array, count: number, slip: number): boolean {
  const least = Math.log(slip / 3) / UNIT - 1;
  const most = Math.log(1 - slip + slip / 3) / UNIT + 1;
  return units.every((unit) => unit >= count * least && unit <= count * most);
}
