import { fromMillimetres, millimetres } from "@tapewise/units";

const MOST_DECIMALS = 7;

/**
 * How many decimals a length is written with beside its uncertainty: one for centimetres (two below 1 mm), two for
 * inches, and so many that the uncertainty shows a digit other than 0, as far as there is one within a nanometre.
 */
export function decimalsFor(uncertaintyMm: number, unit: "cm" | "in"): number {
  const usual = unit === "in" || uncertaintyMm < 1 ? 2 : 1;
  if (uncertaintyMm === 0) return usual;
  const needed = Math.ceil(-Math.log10(fromMillimetres(millimetres(uncertaintyMm), unit)));
  return Math.min(MOST_DECIMALS, Math.max(usual, needed));
}

/** From here on Student's t is the normal distribution to two decimals of its factor. */
export const MANY_DEGREES = 200;
