import { InvalidArgumentError } from "@tapewise/outcome";
import type { DecimalMark } from "./decimal-mark.ts";

/** A decimal number as written: `digits` counts units of its last decimal place. */
export interface WrittenNumber {
  readonly digits: string;
  readonly decimals: number;
  /** The number read without its separator, where that may part thousands as well. */
  readonly grouped: string | undefined;
}

/** Numbers by their decimal mark; the other separator may part thousands, and then all of them. */
const NUMBER = {
  ".": /^(\d*|[1-9]\d{0,2}(?:,\d{3})+)(?:\.(\d+))?$/,
  ",": /^(\d*|[1-9]\d{0,2}(?:\.\d{3})+)(?:,(\d+))?$/,
} as const;

/**
 * Reads a number token. Without a decimal mark from the caller it is read with either; where both readings
 * are possible and differ, as for 1,750, it is the decimal one, and the grouped one is kept beside it.
 */
export function readNumber(token: string, mark?: DecimalMark): WrittenNumber | undefined {
  if (mark !== undefined) return readWith(mark, token);
  const point = readWith(".", token);
  const comma = readWith(",", token);
  if (point === undefined || comma === undefined) return point ?? comma;
  const [decimal, whole] = point.decimals > 0 ? [point, comma] : [comma, point];
  return decimal.decimals > 0 ? { ...decimal, grouped: whole.digits } : decimal;
}

function readWith(mark: DecimalMark, token: string): WrittenNumber | undefined {
  if (!Object.hasOwn(NUMBER, mark)) throw new InvalidArgumentError("decimalMark", mark, "a point or a comma");
  const [match, whole = "", decimals = ""] = NUMBER[mark].exec(token) ?? [];
  if (match === undefined) return undefined;
  return { digits: whole.replace(/\D/g, "") + decimals, decimals: decimals.length, grouped: undefined };
}
