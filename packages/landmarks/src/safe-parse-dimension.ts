import { createIssue, failure, type Outcome, success, unwrap } from "@tapewise/outcome";
import { type DimensionId, dimensionIds } from "./dimension-id.ts";
import { dimensionName } from "./dimension-name.ts";
import { findDimension } from "./find-dimension.ts";
import { landmarksIssues } from "./issues.ts";

/**
 * The dimension that a text names, or an issue that says what it could have meant.
 *
 * Issue codes: `dimension-name-ambiguous`; `dimension-name-unknown`. Both carry ids in their facts
 * (`candidates` or `suggestions`, joined by ", ").
 *
 * @example
 * ```ts
 * import { safeParseDimension } from "@tapewise/landmarks";
 * safeParseDimension("HIP BELT"); // => { ok: true, value: "hip-belt-girth", issues: [] }
 * safeParseDimension("hips").issues[0]?.code; // => "dimension-name-ambiguous"
 * ```
 */
export function safeParseDimension(text: string): Outcome<DimensionId> {
  const match = findDimension(text);
  switch (match.kind) {
    case "match":
      return success(match.id);
    case "ambiguous": {
      const facts = { candidates: match.candidates.join(", "), first: dimensionName(match.candidates[0]) };
      return failure([createIssue(landmarksIssues, "dimension-name-ambiguous", { received: text, facts })]);
    }
    case "unknown": {
      const near = match.suggestions.length > 0 ? match.suggestions : dimensionIds.slice(0, 3);
      const facts = { suggestions: near.join(", ") };
      return failure([createIssue(landmarksIssues, "dimension-name-unknown", { received: text, facts })]);
    }
  }
}

/**
 * The dimension that a text names.
 *
 * @throws `IssuesError` with the issues of {@link safeParseDimension}.
 *
 * @example
 * ```ts
 * import { parseDimension } from "@tapewise/landmarks";
 * parseDimension("full hip"); // => "hip-girth"
 * ```
 */
export function parseDimension(text: string): DimensionId {
  return unwrap(safeParseDimension(text));
}
