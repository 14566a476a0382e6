import { type DimensionId, dimensionName } from "@tapewise/landmarks";
import {
  createIssue,
  failure,
  hasIssues,
  type Issue,
  type IssuePath,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { type LengthReading, type LengthUnit, safeParseLength } from "@tapewise/units";
import { readingIssues } from "./reading-issues.ts";

/** How a list of readings is read. */
export interface ReadReadingsOptions {
  /** Unit of readings that name none. Without it a bare number is an issue. */
  readonly unit?: LengthUnit;
  /** Where the list sits in the caller's data. */
  readonly path?: IssuePath;
}

/**
 * Reads the readings of one dimension as people write them. What cannot be read is reported with its
 * position; what can be read is kept, in its order.
 *
 * Codes: `readings-missing` (an empty list), `readings-not-a-list`, and those of `safeParseLength`.
 *
 * @example
 * ```ts
 * import { safeReadReadings } from "@tapewise/measurement";
 * const outcome = safeReadReadings("torso-length", ["43.2 cm", "17 in", "long"]);
 * outcome.ok && outcome.value.map((reading) => reading.mm); // => [432, 431.8]
 * outcome.issues.map((issue) => issue.path); // => [[2]]
 * ```
 */
export function safeReadReadings(
  dimension: DimensionId,
  texts: readonly unknown[],
  options: ReadReadingsOptions = {},
): Outcome<readonly LengthReading[]> {
  const path = options.path ?? [];
  const facts = { dimension: dimensionName(dimension) };
  if (!Array.isArray(texts)) {
    return failure([createIssue(readingIssues, "readings-not-a-list", { path, received: texts, facts })]);
  }
  const readings: LengthReading[] = [];
  const issues: Issue[] = [];
  // Not forEach, which passes over the holes of a list without a word.
  for (const [index, text] of texts.entries()) {
    const outcome = safeParseLength(text, { path: [...path, index], unit: options.unit });
    if (outcome.ok) readings.push(outcome.value);
    issues.push(...outcome.issues);
  }
  if (readings.length > 0) return success(readings, issues);
  if (hasIssues(issues)) return failure(issues);
  return failure([createIssue(readingIssues, "readings-missing", { path, received: texts, facts })]);
}
