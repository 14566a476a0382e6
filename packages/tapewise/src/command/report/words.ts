import { formatLength, millimetres } from "@tapewise/units";

/** A length in mm as a bare number of the shown unit: tenths of a centimetre, hundredths of an inch. */
export function numberIn(mm: number, unit: "cm" | "in"): string {
  const decimals = unit === "cm" ? 1 : 2;
  const text = formatLength(millimetres(mm), { unit, decimals, rounding: "half-even" });
  return text.slice(0, text.lastIndexOf(" "));
}

/** A length in mm with its unit. */
export function lengthIn(mm: number, unit: "cm" | "in"): string {
  return `${numberIn(mm, unit)} ${unit}`;
}

/** A length of an error's size, in mm, as a bare number of the shown unit: hundredths of a centimetre, thousandths of an inch. */
export function fineIn(mm: number, unit: "cm" | "in"): string {
  const text = unit === "cm" ? (mm / 10).toFixed(2) : (mm / 25.4).toFixed(3);
  return /^-0\.0+$/.test(text) ? text.slice(1) : text;
}

/** A text that begins a line. */
export function capitalised(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
