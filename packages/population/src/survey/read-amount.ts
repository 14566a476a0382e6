import { type DecimalMark, safeParseLength, toMillimetres } from "@tapewise/units";
import type { LengthColumn, MassColumn } from "./survey.ts";

/** Why a cell could not be read. */
export interface Unread {
  readonly reason: string;
}

/** Numbers that mean the same however decimals are written. */
const PLAIN = /^\d{1,9}(?:\.\d{1,2})?$/;
const MASS = { ".": /^\d+(?:\.\d+)?$/, ",": /^\d+(?:,\d+)?$/ };

/** A cell as mm, or as kg under a column of body mass. */
export function readAmount(
  text: string,
  from: LengthColumn | MassColumn,
  decimalMark: DecimalMark | undefined,
): number | Unread {
  if ("kilogramsPerUnit" in from) {
    const units = readNumber(text, decimalMark);
    if (typeof units !== "number") return units;
    return units > 0 ? units * from.kilogramsPerUnit : { reason: "it is not above zero" };
  }
  if (decimalMark !== "," && PLAIN.test(text) && Number(text) > 0)
    return toMillimetres(Number(text), from.unit);
  const outcome = safeParseLength(text, { unit: from.unit, decimalMark });
  return outcome.ok ? outcome.value.mm : { reason: outcome.issues[0].message };
}

/** A number from 0 up, with point or comma before decimals. */
export function readNumber(text: string, decimalMark: DecimalMark | undefined): number | Unread {
  const marks: readonly DecimalMark[] = decimalMark === undefined ? [".", ","] : [decimalMark];
  const fits = marks.some((mark) => MASS[mark].test(text));
  if (!fits) return { reason: "it is no plain number" };
  if (decimalMark === undefined && /^\d{1,3},\d{3}$/.test(text)) {
    return { reason: "its comma may part thousands or decimals" };
  }
  const number = Number(text.replace(",", "."));
  return Number.isFinite(number) ? number : { reason: "it is too large" };
}
