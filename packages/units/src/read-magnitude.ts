import { UNIT_FACTS } from "./data.ts";
import type { DecimalMark } from "./decimal-mark.ts";
import { findUnit, isWord, nearestUnit, unitProblem } from "./find-unit.ts";
import type { LengthUnit } from "./length-unit.ts";
import type { Problem } from "./problem.ts";
import { type Quantity, readQuantity } from "./read-quantity.ts";
import { isNumber, readTokens } from "./tokenize.ts";

/** A number above zero with the finest unit written, if any: `numerator / denominator` of that unit. */
export interface ReadMagnitude {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly unit: LengthUnit | undefined;
  /** The number read without its separator, where that may be what it means. */
  readonly grouped: string | undefined;
}

/** Reads one number above zero and its unit from a text, or says what is wrong with it. */
export function readMagnitude(text: unknown, mark?: DecimalMark): ReadMagnitude | Problem {
  const tokens = readTokens(text);
  if ("code" in tokens) return tokens;
  if (!tokens.some(isNumber)) return { code: "length-not-a-number" };

  let at = tokens[0] === "-" || tokens[0] === "+" ? 1 : 0;
  let magnitude: ReadMagnitude | undefined;
  do {
    const quantity = readQuantity(tokens, at, mark);
    if ("code" in quantity) return quantity;
    at = quantity.end;
    const last = tokens[at - 1] ?? "";
    const unit = findUnit(tokens[at] ?? "");
    if (unit !== undefined) at += 1;
    else if (at < tokens.length) return strayToken(tokens, at);
    const sum: ReadMagnitude | Problem =
      magnitude === undefined
        ? magnitudeOf(quantity.numerator, quantity, unit)
        : addPart(magnitude, quantity, unit ?? impliedUnit(magnitude, quantity, last));
    if ("code" in sum) return sum;
    magnitude = sum;
    // 5 ft - 7 in; 5 ft, 7 in; 5 ft and 7 in
    if (unit === "ft" && ["-", ",", "and"].includes(tokens[at] ?? "") && isNumber(tokens[at + 1])) at += 1;
    if (at < tokens.length && !isNumber(tokens[at])) return strayToken(tokens, at);
  } while (at < tokens.length);
  if (magnitude.numerator === 0n) return { code: "length-zero" };
  return tokens[0] === "-" ? { code: "length-negative" } : magnitude;
}

/**
 * The same magnitude when its separator can only be decimal. In millimetres, and as long as the unit is not
 * known, a single separator with three digits after it may part thousands; in any larger unit it would then
 * stand for at least 10 m, which no tape measures.
 */
export function refuseAmbiguous(read: ReadMagnitude, unit: LengthUnit | undefined): ReadMagnitude | Problem {
  if (read.grouped === undefined || (unit !== undefined && unit !== "mm")) return read;
  // A fourth decimal cannot be part of a thousand, so that both readings offered can be typed.
  const decimal = `${read.grouped.slice(0, -3)}.${read.grouped.slice(-3)}0`;
  const symbol = unit === undefined ? "" : ` ${unit}`;
  return {
    code: "length-ambiguous-separator",
    facts: { grouped: read.grouped + symbol, decimal: decimal + symbol },
  };
}

/** Beside feet a bare number is inches (5'7), beside metres two bare digits are centimetres (1m75). */
function impliedUnit(larger: ReadMagnitude, part: Quantity, last: string): LengthUnit | undefined {
  if (larger.unit === "ft") return "in";
  return larger.unit === "m" && part.denominator === 1n && last.length === 2 ? "cm" : undefined;
}

/** Adds inches to feet, or a smaller metric unit to a larger one; anything else is a number too many. */
function addPart(
  larger: ReadMagnitude,
  part: Quantity,
  unit: LengthUnit | undefined,
): ReadMagnitude | Problem {
  if (larger.unit === undefined || unit === undefined) return { code: "length-several-numbers" };
  const from = UNIT_FACTS[larger.unit];
  const to = UNIT_FACTS[unit];
  if (from.system !== to.system || from.nanometres <= to.nanometres)
    return { code: "length-several-numbers" };
  const ratio = from.nanometres / to.nanometres;
  const limit = BigInt(ratio) * part.denominator;
  if (larger.denominator !== 1n || part.numerator >= limit) {
    return { code: "length-parts-disagree", facts: { larger: larger.unit, smaller: unit, limit: ratio } };
  }
  return magnitudeOf(larger.numerator * limit + part.numerator, part, unit);
}

function magnitudeOf(numerator: bigint, last: Quantity, unit: LengthUnit | undefined): ReadMagnitude {
  return { numerator, denominator: last.denominator, unit, grouped: last.grouped };
}

/** What is wrong with a token that no length goes on with. */
function strayToken(tokens: readonly string[], at: number): Problem {
  const extra = tokens[at] ?? "";
  // A number stands right before it, so that a word is meant as the unit: unless it only joins two numbers.
  const problem = isNumber(tokens[at - 1]) && isWord(extra) ? unitProblem(extra) : undefined;
  const isJoiner = problem?.code === "length-unit-unknown" && nearestUnit(extra) === undefined;
  const moreNumbers = tokens.slice(at).some(isNumber);
  if (problem !== undefined && !(isJoiner && moreNumbers)) return problem;
  return moreNumbers ? { code: "length-several-numbers" } : { code: "length-extra-text", facts: { extra } };
}
