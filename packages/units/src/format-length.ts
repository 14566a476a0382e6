import { InvalidArgumentError } from "@tapewise/outcome";
import { decimalMarkOf } from "./decimal-mark.ts";
import { describeUnit } from "./describe-unit.ts";
import { divideRounded } from "./divide-rounded.ts";
import type { LengthUnit } from "./length-unit.ts";
import type { Millimetres } from "./millimetres.ts";
import { exactDecimal } from "./ratio.ts";
import type { RoundingRule } from "./rounding-rule.ts";

/** A denominator of the fractions on an inch tape. */
export type InchDenominator = 2 | 4 | 8 | 16 | 32 | 64;

/** What both ways to write a length have in common. */
interface LengthFormat {
  /** How the length is brought to the last place written. There is no default. */
  readonly rounding: RoundingRule;
}

/** A length with decimals. */
export interface DecimalLengthFormat extends LengthFormat {
  /** `ft-in` is whole feet, then inches. */
  readonly unit: LengthUnit | "ft-in";
  /** How many decimals, from 0 to 9; in `ft-in` those of the inches. */
  readonly decimals: number;
  readonly denominator?: undefined;
  /** A language tag: decimals are parted by its mark, otherwise by a point. Digits stay Latin, ungrouped. */
  readonly locale?: string | undefined;
}

/** A length in inches with a fraction in lowest terms. */
export interface FractionLengthFormat extends LengthFormat {
  readonly unit: "in" | "ft-in";
  /** The finest fraction. */
  readonly denominator: InchDenominator;
  readonly decimals?: undefined;
  /** `slash` (the default) writes 18 3/8; `character` writes 18⅜ where there is such a character. */
  readonly fractionStyle?: "slash" | "character" | undefined;
}

/** How to write a length: with decimals or with an inch fraction. */
export type FormatLengthOptions = DecimalLengthFormat | FractionLengthFormat;

/** The fractions of halves, quarters and eighths that have a character. */
const FRACTION_CHARACTERS: Readonly<Record<string, string>> = {
  "1/2": "½",
  "1/4": "¼",
  "3/4": "¾",
  "1/8": "⅛",
  "3/8": "⅜",
  "5/8": "⅝",
  "7/8": "⅞",
};

/**
 * Writes a length for people: `43.2 cm`, `18 3/8 in`, `1 ft 6 3/8 in`. `safeParseLength` reads the text
 * back as exactly the rounded length, if that is above zero; three decimals of a millimetre need its
 * `decimalMark`.
 *
 * The length is rounded once, as by `roundLength`, before it is parted into feet and inches, so there is
 * never a 12 in. Thousands are not parted. Below zero stands the minus sign U+2212, except before zero.
 *
 * @throws {@link InvalidArgumentError} when the length is not finite or an option is outside its range.
 *
 * @example
 * ```ts
 * import { formatLength, millimetres } from "@tapewise/units";
 * formatLength(millimetres(466), { unit: "in", denominator: 8, rounding: "half-even" }); // => "18 3/8 in"
 * formatLength(millimetres(914), { unit: "ft-in", decimals: 0, rounding: "half-even" }); // => "3 ft 0 in"
 * formatLength(millimetres(432), { unit: "cm", decimals: 1, rounding: "half-even", locale: "de" }); // => "43,2 cm"
 * formatLength(millimetres(-3), { unit: "mm", decimals: 0, rounding: "half-even" }); // => "−3 mm"
 * ```
 */
export function formatLength(mm: Millimetres, options: FormatLengthOptions): string {
  if (!Number.isFinite(mm)) throw new InvalidArgumentError("mm", mm, "a finite number");
  const unit = options.unit === "ft-in" ? "in" : options.unit;
  const perUnit = options.denominator === undefined ? decimalsOf(options) : denominatorOf(options);
  const { n, d } = exactDecimal(mm);
  const step = BigInt(describeUnit(unit).nanometres) * d;
  const steps = divideRounded(n * 1_000_000n * perUnit, step, options.rounding);
  const sign = steps < 0n ? "−" : "";
  const size = steps < 0n ? -steps : steps;
  const perFoot = 12n * perUnit;
  if (options.unit !== "ft-in" || size < perFoot)
    return `${sign}${numberText(size, perUnit, options)} ${unit}`;
  return `${sign}${size / perFoot} ft ${numberText(size % perFoot, perUnit, options)} in`;
}

/** `size / perUnit`, which is on the grid, as the options have it written. */
function numberText(size: bigint, perUnit: bigint, options: FormatLengthOptions): string {
  const whole = size / perUnit;
  const rest = size % perUnit;
  if (options.denominator === undefined) {
    if (perUnit === 1n) return String(whole);
    const mark = options.locale === undefined ? "." : decimalMarkOf(options.locale);
    return `${whole}${mark}${String(rest).padStart(options.decimals, "0")}`;
  }
  if (rest === 0n) return String(whole);
  const fraction = fractionText(rest, perUnit);
  const character = options.fractionStyle === "character" ? FRACTION_CHARACTERS[fraction] : undefined;
  if (whole === 0n) return character ?? fraction;
  return character === undefined ? `${whole} ${fraction}` : `${whole}${character}`;
}

/** A fraction in lowest terms; the denominator is a power of two. */
function fractionText(numerator: bigint, denominator: bigint): string {
  let [top, bottom] = [numerator, denominator];
  while (top % 2n === 0n) [top, bottom] = [top / 2n, bottom / 2n];
  return `${top}/${bottom}`;
}

function denominatorOf({ denominator, unit }: FractionLengthFormat): bigint {
  if (![2, 4, 8, 16, 32, 64].includes(denominator)) {
    throw new InvalidArgumentError("denominator", denominator, "2, 4, 8, 16, 32 or 64");
  }
  if (unit !== "in" && unit !== "ft-in") {
    throw new InvalidArgumentError("unit", unit, "in or ft-in for a fraction");
  }
  return BigInt(denominator);
}

function decimalsOf({ decimals }: DecimalLengthFormat): bigint {
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 9) {
    throw new InvalidArgumentError("decimals", decimals, "a whole number from 0 to 9");
  }
  return 10n ** BigInt(decimals);
}
