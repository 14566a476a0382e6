import type { DecimalMark } from "./decimal-mark.ts";
import type { Problem } from "./problem.ts";
import { readNumber } from "./read-number.ts";
import { isNumber } from "./tokenize.ts";

/** One number among the tokens, whole, decimal or with a fraction, exactly as `numerator / denominator`. */
export interface Quantity {
  readonly numerator: bigint;
  readonly denominator: bigint;
  /** The number read without its separator, where that may part thousands as well. */
  readonly grouped: string | undefined;
  /** Where the tokens of the number end. */
  readonly end: number;
}

/** Reads the number that starts at a token, or says what is wrong there. */
export function readQuantity(tokens: readonly string[], at: number, mark?: DecimalMark): Quantity | Problem {
  const start = tokens[at] ?? "";
  if (!isNumber(start)) return { code: "length-extra-text", facts: { extra: start } };
  const top = numeratorAt(tokens, at);
  if (top !== undefined)
    return readFraction(top === at ? undefined : start, tokens.slice(top, top + 3), top + 3);
  const number = readNumber(start, mark);
  if (number === undefined) return { code: "length-not-a-number" };
  const { digits, decimals, grouped } = number;
  return { numerator: BigInt(digits), denominator: 10n ** BigInt(decimals), grouped, end: at + 1 };
}

/** Where the numerator of a fraction stands: `3/8`, `18 3/8` or `18-3/8`. */
function numeratorAt(tokens: readonly string[], at: number): number | undefined {
  if (tokens[at + 1] === "/") return at;
  const next = tokens[at + 1] === "-" ? at + 2 : at + 1;
  return isNumber(tokens[next]) && tokens[next + 1] === "/" ? next : undefined;
}

/**
 * A fraction, alone or after a whole number. After one it must be below one: 18 9/8 could be added up, but
 * one of its numbers is a slip, and nobody knows which.
 */
function readFraction(
  whole: string | undefined,
  fraction: readonly string[],
  end: number,
): Quantity | Problem {
  const [top = "", , bottom = ""] = fraction;
  if (/^\d+ \d+ 0*[1-9]\d*$/.test(`${whole ?? 0} ${top} ${bottom}`)) {
    const numerator = BigInt(top);
    const denominator = BigInt(bottom);
    if (whole === undefined || numerator < denominator) {
      return {
        numerator: BigInt(whole ?? 0) * denominator + numerator,
        denominator,
        grouped: undefined,
        end,
      };
    }
  }
  return { code: "length-fraction-impossible", facts: { fraction: fraction.join("") } };
}
