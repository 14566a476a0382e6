import { type IssuePath, type Outcome, success, unwrap } from "@tapewise/outcome";
import type { DecimalMark } from "./decimal-mark.ts";
import { describeUnit } from "./describe-unit.ts";
import type { LengthUnit } from "./length-unit.ts";
import { type Millimetres, millimetres } from "./millimetres.ts";
import { problemFailure } from "./problem.ts";
import { nearestDouble } from "./ratio.ts";
import { readMagnitude, refuseAmbiguous } from "./read-magnitude.ts";

/** A length that somebody wrote down. */
export interface LengthReading {
  /** The length: the double nearest to what was written. Above zero. */
  readonly mm: Millimetres;
  /** The finest unit written (`in` for 1 ft 6 in), or the caller's where the text has none. */
  readonly unit: LengthUnit;
  /** The step that the writing implies: 1 mm for 43.2 cm, 10 mm for 44 cm, 1/8 in for 18 3/8 in. */
  readonly stepMm: Millimetres;
  /** The text as it was given. */
  readonly text: string;
}

/** How to read a length. */
export interface ParseLengthOptions {
  /** The unit of a text that has none; one in the text wins. There is no default. */
  readonly unit?: LengthUnit | undefined;
  /** The character that the writer is known to put before decimals; the other one then parts thousands. */
  readonly decimalMark?: DecimalMark | undefined;
  /** Where the text sits in the caller's data; issues carry it. */
  readonly path?: IssuePath | undefined;
}

/**
 * Reads one length as people write it: `43.2 cm`, `43,2cm`, `18 3/8 in`, `18⅜″`, `5'7"`, `1 ft 6 in`, `1m75`.
 *
 * Point and comma are both read as decimal. `1,750.5` and `1.750,5` are clear too, but `1,750 mm` may be
 * either and is refused, unless `decimalMark` says which. Capitals make no difference, so `M` is the metre.
 * A whole number before a fraction takes a space or a hyphen, and the fraction must then be below one.
 * At most 64 characters, so that reading takes bounded time.
 *
 * Issue codes: `length-not-text`, `length-empty`, `length-too-long`, `length-not-a-number`,
 * `length-no-unit`, `length-unit-unknown`, `length-unit-wrong-kind`, `length-unit-unread`,
 * `length-negative`, `length-zero`, `length-fraction-impossible`, `length-ambiguous-separator`,
 * `length-several-numbers`, `length-parts-disagree`, `length-extra-text`.
 *
 * @example
 * ```ts
 * import { safeParseLength } from "@tapewise/units";
 * const reading = safeParseLength("18 3/8 in");
 * reading.ok && reading.value.mm; // => 466.725
 * reading.ok && reading.value.stepMm; // => 3.175
 * const bare = safeParseLength("19");
 * bare.ok || bare.issues[0].expected; // => "19 cm or 19 in"
 * ```
 */
export function safeParseLength(text: unknown, options: ParseLengthOptions = {}): Outcome<LengthReading> {
  const read = readMagnitude(text, options.decimalMark);
  if ("code" in read) return problemFailure(read, text, options.path);
  const unit = read.unit ?? options.unit;
  if (unit === undefined) {
    const facts = { number: String(text).trim() };
    return problemFailure({ code: "length-no-unit", facts }, text, options.path);
  }
  const settled = refuseAmbiguous(read, unit);
  if ("code" in settled) return problemFailure(settled, text, options.path);
  const { numerator, denominator } = settled;
  const nanometres = BigInt(describeUnit(unit).nanometres);
  const inMillimetres = (count: bigint): Millimetres =>
    millimetres(nearestDouble(count * nanometres, denominator * 1_000_000n));
  return success({ mm: inMillimetres(numerator), unit, stepMm: inMillimetres(1n), text: String(text) });
}

/**
 * As {@link safeParseLength}, for text that is known to be right.
 *
 * @throws `IssuesError` with the issues of {@link safeParseLength}.
 *
 * @example
 * ```ts
 * import { parseLength } from "@tapewise/units";
 * parseLength("1 ft 6 3/8 in").mm; // => 466.725
 * parseLength("43,2", { unit: "cm" }).mm; // => 432
 * ```
 */
export function parseLength(text: string, options: ParseLengthOptions = {}): LengthReading {
  return unwrap(safeParseLength(text, options));
}
