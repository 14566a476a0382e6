import type { DecimalMark } from "./decimal-mark.ts";

/** A decimal number as written: `digits` counts units of its last decimal place. */
export interface WrittenNumber {
  readonly digits: bigint;
  readonly decimals: number;
  /** Set when the separator may as well part thousands: the number without it. */
  readonly grouped: string | undefined;
}

/**
 * Reads a number token. Without a decimal mark from the caller the writing decides: of two different
 * separators the last is the decimal one, a repeated one parts thousands, and a single one is taken as
 * decimal, but marked when three digits follow it and it could part thousands.
 */
export function readNumber(token: string, decimalMark?: DecimalMark): WrittenNumber | undefined {
  const separators = token.replace(/\d/g, "");
  const first = separators[0];
  const last = separators.at(-1);
  const mark = decimalMark ?? (separators.length > 1 && first === last ? otherMark(last) : last);
  const [whole = "", decimals = "", more] = mark === undefined ? [token] : token.split(mark);
  const groups = whole.split(/[.,]/);
  if (more !== undefined || /\D/.test(decimals) || !wellGrouped(groups)) return undefined;
  const digits = BigInt(groups.join("") + decimals);
  const unclear = decimalMark === undefined && separators.length === 1 && /^[1-9]\d{0,2}\D\d{3}$/.test(token);
  return { digits, decimals: decimals.length, grouped: unclear ? whole + decimals : undefined };
}

function otherMark(mark: string | undefined): DecimalMark {
  return mark === "." ? "," : ".";
}

function wellGrouped(groups: readonly string[]): boolean {
  if (groups.length === 1) return true;
  return groups.every((group, place) => (place === 0 ? /^[1-9]\d{0,2}$/ : /^\d{3}$/).test(group));
}
