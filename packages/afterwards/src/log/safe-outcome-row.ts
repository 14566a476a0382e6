import { speakDimension } from "@tapewise/charts";
import { type DimensionId, dimensionIds, plausibleLimits } from "@tapewise/landmarks";
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
import {
  OUTCOME_VERSION,
  type OutcomeEstimate,
  type OutcomeProduct,
  type OutcomeRow,
} from "./outcome-row.ts";
import {
  wantedFromZero,
  wantedMoment,
  wantedName,
  wantedOutcome,
  wantedPositive,
  wantedReason,
} from "./wanted.ts";

const FIELDS: ReadonlySet<keyof OutcomeRow> = new Set([
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
]);
const PRODUCT_FIELDS: ReadonlySet<keyof OutcomeProduct> = new Set(["maker", "chart"]);
const ESTIMATE_FIELDS: ReadonlySet<keyof OutcomeEstimate> = new Set([
  "mm",
  "uncertaintyMm",
  "degreesOfFreedom",
]);
const DIMENSIONS: ReadonlySet<string> = new Set(dimensionIds);

/** A row in the making. */
type Draft<T> = { -readonly [F in keyof T]: T[F] };

/**
 * Checks that a value is a row of the log, and copies what belongs to one.
 *
 * Codes: `outcome-not-an-object`, `outcome-version-newer`, `outcome-version-unknown`, `outcome-field-missing`,
 * `outcome-field-invalid`, `outcome-kept-yet-exchanged`; as warnings `outcome-field-unknown`,
 * `outcome-person-identifying` and `outcome-estimate-implausible`.
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
  const id = optionalOf(value, "id", wantedName, place);
  const at = requiredOf(value, "at", wantedMoment, place);
  const person = optionalOf(value, "person", wantedName, place);
  const product = productOf(value, place);
  const size = requiredOf(value, "size", wantedName, place);
  const outcome = requiredOf(value, "outcome", wantedOutcome, place);
  const reason = optionalOf(value, "reason", wantedReason, place);
  const exchangedFor = optionalOf(value, "exchangedFor", wantedName, place);
  const estimates = estimatesOf(value, place);
  // Field by field and not by spreading: a log has a hundred thousand rows.
  const row: Draft<OutcomeRow> = { v: OUTCOME_VERSION, at, product, size, outcome };
  if (id !== undefined) row.id = id;
  if (person !== undefined) row.person = person;
  if (reason !== undefined) row.reason = reason;
  if (exchangedFor !== undefined) row.exchangedFor = exchangedFor;
  if (estimates !== undefined) row.estimates = estimates;
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

function productOf(value: Fields, { path, issues }: Place): OutcomeProduct {
  const { product } = value;
  if (!isFields(product)) {
    complain("product", product, 'the chart that the size is of, such as {"chart":"…"}', { path, issues });
    return { chart: "" };
  }
  const place = { path: [...path, "product"], issues };
  warnOfOthers(product, PRODUCT_FIELDS, place);
  const maker = optionalOf(product, "maker", wantedName, place);
  const chart = requiredOf(product, "chart", wantedName, place);
  return maker === undefined ? { chart } : { maker, chart };
}

function estimatesOf(value: Fields, place: Place): OutcomeRow["estimates"] {
  const { estimates } = value;
  if (estimates === undefined) return undefined;
  if (!isFields(estimates)) {
    complain("estimates", estimates, "an object with an estimate for each dimension", place);
    return undefined;
  }
  const inside = { ...place, path: [...place.path, "estimates"] };
  warnOfOthers(estimates, DIMENSIONS, inside);
  const known: { [D in DimensionId]?: OutcomeEstimate } = {};
  for (const dimension of dimensionIds) {
    const one = estimates[dimension];
    if (one === undefined) continue;
    if (isFields(one)) {
      const estimate = estimateOf(one, { ...inside, path: [...inside.path, dimension] });
      known[dimension] = estimate;
      questionLength(dimension, estimate.mm, inside);
    } else complain(dimension, one, 'an estimate such as {"mm":436,"uncertaintyMm":7.1}', inside);
  }
  return known;
}

function estimateOf(one: Fields, place: Place): OutcomeEstimate {
  warnOfOthers(one, ESTIMATE_FIELDS, place);
  const mm = requiredOf(one, "mm", wantedPositive, place);
  const uncertaintyMm = requiredOf(one, "uncertaintyMm", wantedFromZero, place);
  const degreesOfFreedom = optionalOf(one, "degreesOfFreedom", wantedPositive, place);
  return degreesOfFreedom === undefined ? { mm, uncertaintyMm } : { mm, uncertaintyMm, degreesOfFreedom };
}

/** A length that nobody has was written in another unit, as a rule. */
function questionLength(dimension: DimensionId, mm: number, { path, issues }: Place): void {
  if (!wantedPositive.test(mm)) return;
  const { from: fromMm, to: toMm } = limitsOf(dimension);
  if (mm >= fromMm && mm <= toMm) return;
  const facts = { dimension: speakDimension(dimension), fromMm, toMm };
  const details = { path: [...path, dimension, "mm"], received: mm, facts };
  issues.push(createIssue(afterwardsIssues, "outcome-estimate-implausible", details));
}

const limits = new Map<DimensionId, { readonly from: number; readonly to: number }>();

function limitsOf(dimension: DimensionId): { readonly from: number; readonly to: number } {
  const known = limits.get(dimension) ?? plausibleLimits(dimension, "child");
  limits.set(dimension, known);
  return known;
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
