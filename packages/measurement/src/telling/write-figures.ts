import type { IntervalEstimate } from "../reliability/interval-estimate.ts";
import type { ToldUnit } from "./told.ts";

/** Millimetres in one of the unit: exact. */
export function millimetresIn(unit: ToldUnit): number {
  return unit === "cm" ? 10 : 25.4;
}

/** A length of errors' size as a bare number: tenths of a millimetre, thousandths of an inch. */
export function writeSmall(mm: number, unit: ToldUnit): string {
  return fixed(mm / millimetresIn(unit), unit === "cm" ? 2 : 3);
}

/** The ends of an interval of such lengths. */
export function writeSmallEnds({ lower, upper }: IntervalEstimate, unit: ToldUnit): string {
  return `${writeSmall(lower, unit)} to ${writeSmall(upper, unit)}`;
}

/** A number with so many decimals, and no negative zero. */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return /^-0(?:\.0+)?$/.test(text) ? text.slice(1) : text;
}

/** The ends of an interval. */
export function fixedEnds({ lower, upper }: IntervalEstimate, decimals: number): string {
  return `${fixed(lower, decimals)} to ${fixed(upper, decimals)}`;
}

/** A chance of a test: three decimals, and never 0. */
export function writeChance(pValue: number): string {
  return pValue < 0.001 ? "under 0.001" : pValue.toFixed(3);
}

/** A share in whole per cent; a correlation below 0 shares nothing. */
export function wholePercent(share: number): string {
  return `${(100 * Math.max(0, share)).toFixed(0)} %`;
}

/** "1 subject", "30 subjects". */
export function counted(count: number, one: string, more: string = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}
