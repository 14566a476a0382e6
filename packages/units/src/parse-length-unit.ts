import { type IssuePath, type Outcome, success, unwrap } from "@tapewise/outcome";
import { findUnit, unitProblem } from "./find-unit.ts";
import type { LengthUnit } from "./length-unit.ts";
import { type Problem, problemFailure } from "./problem.ts";
import { readTokens } from "./tokenize.ts";

/** Where a unit's text sits in the caller's data. */
export interface ParseLengthUnitOptions {
  readonly path?: IssuePath | undefined;
}

/**
 * Reads a unit that stands alone, as in the heading of a column: `cm`, `in.`, `Inches`, `″`.
 *
 * Issue codes: `length-not-text`, `length-empty`, `length-too-long`, `length-unit-unknown`,
 * `length-unit-wrong-kind`, `length-unit-unread`.
 *
 * @example
 * ```ts
 * import { safeParseLengthUnit } from "@tapewise/units";
 * safeParseLengthUnit("Inches"); // => { ok: true, value: "in", issues: [] }
 * const slip = safeParseLengthUnit("cn");
 * slip.ok || slip.issues[0].facts.suggestion; // => "cm"
 * ```
 */
export function safeParseLengthUnit(
  text: unknown,
  options: ParseLengthUnitOptions = {},
): Outcome<LengthUnit> {
  const read = readUnit(text);
  return typeof read === "string" ? success(read) : problemFailure(read, text, options.path);
}

/**
 * As {@link safeParseLengthUnit}, for text that is known to be right.
 *
 * @throws `IssuesError` with the issues of {@link safeParseLengthUnit}.
 *
 * @example
 * ```ts
 * import { parseLengthUnit } from "@tapewise/units";
 * parseLengthUnit("feet"); // => "ft"
 * ```
 */
export function parseLengthUnit(text: string, options: ParseLengthUnitOptions = {}): LengthUnit {
  return unwrap(safeParseLengthUnit(text, options));
}

function readUnit(text: unknown): LengthUnit | Problem {
  const tokens = readTokens(text);
  if ("code" in tokens) return tokens;
  const word = tokens.join(" ");
  return findUnit(word) ?? unitProblem(word);
}
