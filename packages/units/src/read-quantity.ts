import type { DecimalMark } from "./decimal-mark.ts";
import type { Problem } from "./issues.ts";
import { readNumber } from "./read-number.ts";
import { isNumber } from "./tokenize.ts";

/** One number among the tokens, whole, decimal or with a fraction, exactly as `numerator / denominator`. */
export interface Quantity {
  readonly numerator: bigint;
  readonly denominator: bigint;
  /** The number read without its separator, when that may be what it means. */
  readonly grouped: string | undefined;
  /** Where the tokens of the number end. */
  readonly end: number;
}

/** Reads the number that starts at a token, or says what is wrong there. */
export function readQuantity(tokens: readonly string[], at: number, mark?: DecimalMark): Quantity | Problem {
  const start = tokens[at];
  if (!isNumber(start)) return { code: "length-extra-text", facts: { extra: start ?? tokens.at(-1) ?? "" } };
  const top = numeratorAt(tokens, at);
  if (top === undefined) {
    const number = readNumber(start, mark);
    if (number === undefined) return { code: "length-not-a-number" };
    const { digits: numerator, decimals, grouped } = number;
    const denominator = 10n ** BigInt(decimals);
    return { numerator, denominator, grouped, end: at + 1 };
  }
  const parts = [top === at ? "0" : start, tokens[top] ?? "", tokens[top + 2] ?? ""];
  const fraction = `${parts[1]}/${parts[2]}`;
  if (!parts.every((part) => /^\d+$/.test(part)))
    return { code: "length-fraction-impossible", facts: { fraction } };
  const [whole = 0n, numerator = 0n, denominator = 0n] = parts.map(BigInt);
  // 18 9/8 is refused although it could be added up: one of its numbers is a slip, and none knows which.
  if (denominator === 0n || (top > at && numerator >= denominator)) {
    return { code: "length-fraction-impossible", facts: { fraction } };
  }
  return { numerator: whole * denominator + numerator, denominator, grouped: undefined, end: top + 3 };
}

/** Where the numerator of a fraction stands: `3/8`, `18 3/8` or `18-3/8`. */
function numeratorAt(tokens: readonly string[], at: number): number | undefined {
  if (tokens[at + 1] === "/") return at;
  const next = tokens[at + 1] === "-" ? at + 2 : at + 1;
  return isNumber(tokens[next]) && tokens[next + 1] === "/" ? next : undefined;
}
