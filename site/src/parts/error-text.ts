import type { Lang } from "../layouts/languages.ts";
import type { ShownUnit } from "./lengths.ts";

/** The size of an error: tenths of a millimetre, hundredths of an inch, with the sign of one below zero. */
export function errorText(mm: number, unit: ShownUnit, lang: Lang): string {
  return `${errorNumber(mm, unit, lang)}\u00a0${errorUnit(unit, lang)}`;
}

/** The same without its unit, for tables whose head names it. */
export function errorNumber(mm: number, unit: ShownUnit, lang: Lang): string {
  return unit === "cm" ? decimalText(mm, 1, lang) : decimalText(mm / 25.4, 2, lang);
}

/** A number with so many decimals, as the language writes it, and no negative zero. */
export function decimalText(value: number, decimals: number, lang: Lang): string {
  const rounded = Number(value.toFixed(decimals));
  return new Intl.NumberFormat(lang, { minimumFractionDigits: decimals, maximumFractionDigits: decimals })
    .format(rounded === 0 ? 0 : rounded)
    .replace("-", "−");
}

/** How the language writes the unit of errors. */
export function errorUnit(unit: ShownUnit, lang: Lang): string {
  return unit === "cm" ? "mm" : lang === "de" ? "Zoll" : "in";
}
