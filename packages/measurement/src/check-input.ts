import { dimensionName } from "@tapewise/landmarks";
import { createIssue, InvalidArgumentError, type Issue, type IssuePath } from "@tapewise/outcome";
import type { LengthReading } from "@tapewise/units";
import { findConditionFaults } from "./conditions.ts";
import type { EstimateInput } from "./estimate-input.ts";
import { readingIssues } from "./reading-issues.ts";
import { isErrorMm, LARGEST_ERROR_MM, requireLength, requireStep } from "./require-argument.ts";

/** What keeps an estimate from being made of data that a user gave. */
export function checkInput(input: EstimateInput, path: IssuePath): readonly Issue[] {
  const issues: Issue[] = [];
  if (input.readings.length === 0) {
    const facts = { dimension: dimensionName(input.dimension) };
    issues.push(createIssue(readingIssues, "readings-missing", { path, received: input.readings, facts }));
  }
  const { error, conditions } = input;
  for (const part of ["biasMm", "repeatMm", "resolutionMm"] as const) {
    const value: unknown = error?.[part];
    if (error === undefined || isErrorMm(value)) continue;
    const facts = { part, largestMm: LARGEST_ERROR_MM };
    issues.push(
      createIssue(readingIssues, "error-model-invalid", {
        path: [...path, "error", part],
        received: value,
        facts,
      }),
    );
  }
  for (const { part, received, choices } of conditions === undefined ? [] : findConditionFaults(conditions)) {
    const place = part === "conditions" ? [part] : ["conditions", part];
    issues.push(
      createIssue(readingIssues, "conditions-invalid", {
        path: [...path, ...place],
        received,
        facts: { part, choices },
      }),
    );
  }
  return issues;
}

/** Refuses readings that `safeParseLength` could not have made. */
export function requireReadings(readings: readonly LengthReading[]): void {
  if (!Array.isArray(readings)) throw new InvalidArgumentError("readings", readings, "a list of readings");
  for (const [index, reading] of readings.entries()) {
    if (typeof reading !== "object" || reading === null) {
      throw new InvalidArgumentError(`readings[${index}]`, reading, "a reading, as safeParseLength makes it");
    }
    requireLength(`readings[${index}].mm`, reading.mm);
    requireStep(`readings[${index}].stepMm`, reading.stepMm);
  }
}
