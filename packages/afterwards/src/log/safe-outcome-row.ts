import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { afterwardsIssues } from "../issues.ts";
import {
  complain,
  type Fields,
  isFields,
  optionalOf,
  type Place,
  requiredOf,
  warnOfOthers,
} from "./fields.ts";
import { identifying } from "./identifying.ts";
import { OUTCOME_VERSION, type OutcomeEstimate, type OutcomeRow } from "./outcome-row.ts";
import {
  wantedFromZero,
  wantedMoment,
  wantedName,
  wantedOutcome,
  wantedPositive,
  wantedReason,
} from "./wanted.ts";

const FIELDS: readonly (keyof OutcomeRow)[] = [
  "v",
  "id",
  "at",
  "person",
  "product",
  "size",
  "outcome",
  "reason",
  "exchangedFor",
  "estimates",
];

/**
 * Checks that a value is a row of the log, and copies what belongs to one.
 *
 * Codes: `outcome-not-an-object`, `outcome-version-newer`, `outcome-version-unknown`, `outcome-field-missing`,
 * `outcome-field-invalid`, `outcome-kept-yet-exchanged`; as warnings `outcome-field-unknown` and
 * `outcome-person-identifying`.
 *
 * @example
 * ```ts
 * import { safeOutcomeRow } from "@tapewise/afterwards";
 * const row = { v: 1, at: "2026-05-04", product: { chart: "Doily 45" }, size: "M", outcome: "kept" };
 * safeOutcomeRow(row).ok; // => true
 * safeOutcomeRow({ ...row, at: "yesterday" }).issues.map(({ code, path }) => [code, path]);
 * // => [["outcome-field-invalid", ["at"]]]
 * ```
 */
export function safeOutcomeRow(value: unknown): Outcome<OutcomeRow> {
  if (!isFields(value)) {
    return failure([createIssue(afterwardsIssues, "outcome-not-an-object", { received: value })]);
  }
  if (value.v !== OUTCOME_VERSION) return failure([versionIssue(value.v)]);
  const issues: Issue[] = [];
  const place: Place = { path: [], issues };
  const row: OutcomeRow = {
    v: OUTCOME_VERSION,
    ...optionalOf(value, "id", wantedName, place),
    at: requiredOf(value, "at", wantedMoment, place),
    ...optionalOf(value, "person", wantedName, place),
    product: productOf(value, place),
    size: requiredOf(value, "size", wantedName, place),
    outcome: requiredOf(value, "outcome", wantedOutcome, place),
    ...optionalOf(value, "reason", wantedReason, place),
    ...optionalOf(value, "exchangedFor", wantedName, place),
    ...estimatesOf(value, place),
  };
  warnOfOthers(value, FIELDS, place);
  complainOfWhole(row, issues);
  const isBroken = issues.some(({ severity }) => severity === "error");
  return isBroken && hasIssues(issues) ? failure(issues) : success(row, issues);
}

function versionIssue(v: unknown): Issue {
  const isNewer = Number.isSafeInteger(v) && Number(v) > OUTCOME_VERSION;
  const code = isNewer ? "outcome-version-newer" : "outcome-version-unknown";
  return createIssue(afterwardsIssues, code, {
    path: ["v"],
    received: v,
    facts: { known: OUTCOME_VERSION },
  });
}

function productOf(value: Fields, { path, issues }: Place): OutcomeRow["product"] {
  const { product } = value;
  if (!isFields(product)) {
    complain("product", product, 'the chart that the size is of, such as {"chart":"…"}', { path, issues });
    return { chart: "" };
  }
  const place = { path: [...path, "product"], issues };
  warnOfOthers(product, ["maker", "chart"], place);
  return {
    ...optionalOf(product, "maker", wantedName, place),
    chart: requiredOf(product, "chart", wantedName, place),
  };
}

function estimatesOf(value: Fields, place: Place): Pick<OutcomeRow, "estimates"> {
  const { estimates } = value;
  if (estimates === undefined) return {};
  if (!isFields(estimates)) {
    complain("estimates", estimates, "an object with an estimate for each dimension", place);
    return {};
  }
  const inside = { ...place, path: [...place.path, "estimates"] };
  warnOfOthers(estimates, dimensionIds, inside);
  const known = dimensionIds.flatMap((dimension): readonly (readonly [DimensionId, OutcomeEstimate])[] => {
    const one = estimates[dimension];
    if (one === undefined) return [];
    if (!isFields(one)) {
      complain(dimension, one, 'an estimate such as {"mm":436,"uncertaintyMm":7.1}', inside);
      return [];
    }
    return [[dimension, estimateOf(one, { ...inside, path: [...inside.path, dimension] })]];
  });
  return { estimates: Object.fromEntries(known) };
}

function estimateOf(one: Fields, place: Place): OutcomeEstimate {
  warnOfOthers(one, ["mm", "uncertaintyMm", "degreesOfFreedom"], place);
  return {
    mm: requiredOf(one, "mm", wantedPositive, place),
    uncertaintyMm: requiredOf(one, "uncertaintyMm", wantedFromZero, place),
    ...optionalOf(one, "degreesOfFreedom", wantedPositive, place),
  };
}

function complainOfWhole(row: OutcomeRow, issues: Issue[]): void {
  if (row.outcome === "kept") {
    for (const field of ["reason", "exchangedFor"] as const) {
      const received = row[field];
      if (received === undefined) continue;
      const details = { path: [field], received, facts: { field } };
      issues.push(createIssue(afterwardsIssues, "outcome-kept-yet-exchanged", details));
    }
  }
  if (typeof row.person !== "string") return;
  const kind = identifying(row.person);
  if (kind === undefined) return;
  // The address itself is not repeated: issues are kept and printed elsewhere.
  const details = { path: ["person"], received: kind, facts: { kind } };
  issues.push(createIssue(afterwardsIssues, "outcome-person-identifying", details));
}
