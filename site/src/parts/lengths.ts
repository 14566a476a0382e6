import { units } from "tapewise";
import type { Lang } from "../layouts/languages.ts";

/** The units that lengths are shown in. */
export type ShownUnit = "cm" | "in";

/** A length as a reader of the language writes it: tenths of a centimetre, eighths of an inch. */
export function lengthText(mm: number, unit: ShownUnit, lang: Lang): string {
  const length = units.millimetres(mm);
  return unit === "cm"
    ? units.formatLength(length, { unit, decimals: 1, rounding: "half-even", locale: lang })
    : units
        .formatLength(length, { unit, denominator: 8, rounding: "half-even" })
        .replace(/in$/, inches(lang));
}

/** The same without its unit, for tables and axes whose head names it. */
export function lengthNumber(mm: number, unit: ShownUnit, lang: Lang): string {
  return lengthText(mm, unit, lang).replace(/\s\p{L}+$/u, "");
}

/** How the language writes the unit. */
export function unitText(unit: ShownUnit, lang: Lang): string {
  return unit === "cm" ? "cm" : inches(lang);
}

function inches(lang: Lang): string {
  return lang === "de" ? "Zoll" : "in";
}
