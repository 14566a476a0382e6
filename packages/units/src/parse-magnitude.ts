import { type IssuePath, type Outcome, success, unwrap } from "@tapewise/outcome";
import type { DecimalMark } from "./decimal-mark.ts";
import type { LengthUnit } from "./length-unit.ts";
import { problemFailure } from "./problem.ts";
import { readMagnitude, refuseAmbiguous } from "./read-magnitude.ts";

/**
 * A number as somebody wrote it, exactly: `numerator / denominator` of `unit`.
 *
 * The fraction is not reduced, so `1 / denominator` is the step that the writing implies: 43.20 is
 * 4320/100, 18 6/16 is 294/16. Feet and inches are counted in inches, metres and centimetres in
 * centimetres: in the finest unit written.
 */
export interface Magnitude {
  readonly numerator: bigint;
  readonly denominator: bigint;
  /** The finest unit in the text; absent when the text has none. */
  readonly unit?: LengthUnit;
  /** The text as it was given. */
  readonly text: string;
}

/** How to read a number. */
export interface ParseMagnitudeOptions {
  /** The character that the writer is known to put before decimals; the other one then parts thousands. */
  readonly decimalMark?: DecimalMark | undefined;
  /** Where the text sits in the caller's data; issues carry it. */
  readonly path?: IssuePath | undefined;
}

/**
 * Reads one number above zero with an optional unit: whole, decimal (point or comma), fraction, whole and
 * fraction, or feet and inches. For cells whose unit may stand elsewhere; `safeParseLength` needs a unit.
 *
 * Issue codes: those of {@link safeParseLength} without `length-no-unit`. Without a unit, a separator with
 * three digits after it is always ambiguous.
 *
 * @example
 * ```ts
 * import { safeParseMagnitude } from "@tapewise/units";
 * const cell = safeParseMagnitude("15 1/2");
 * cell.ok && `${cell.value.numerator}/${cell.value.denominator} ${cell.value.unit}`; // => "31/2 undefined"
 * ```
 */
export function safeParseMagnitude(text: unknown, options: ParseMagnitudeOptions = {}): Outcome<Magnitude> {
  const read = readMagnitude(text, options.decimalMark);
  const settled = "code" in read ? read : refuseAmbiguous(read, read.unit);
  if ("code" in settled) return problemFailure(settled, text, options.path);
  const { numerator, denominator, unit } = settled;
  return success({ numerator, denominator, ...(unit === undefined ? {} : { unit }), text: String(text) });
}

/**
 * As {@link safeParseMagnitude}, for text that is known to be right.
 *
 * @throws `IssuesError` with the issues of {@link safeParseMagnitude}.
 *
 * @example
 * ```ts
 * import { parseMagnitude } from "@tapewise/units";
 * Number(parseMagnitude("1' 6").numerator); // => 18
 * ```
 */
export function parseMagnitude(text: string, options: ParseMagnitudeOptions = {}): Magnitude {
  return unwrap(safeParseMagnitude(text, options));
}
