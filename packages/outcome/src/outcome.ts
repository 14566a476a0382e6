import { IssuesError } from "./errors.ts";
import type { Issue } from "./issue.ts";

/** A value, with whatever was questioned or left out on the way to it. */
export interface Success<T> {
  readonly ok: true;
  readonly value: T;
  readonly issues: readonly Issue[];
}

/** No value, and at least one issue that says why. */
export interface Failure {
  readonly ok: false;
  readonly issues: readonly [Issue, ...Issue[]];
}

/** What every function over user data returns: a value or issues, never an exception, never `NaN`. */
export type Outcome<T> = Success<T> | Failure;

/**
 * A value that could be made. `issues` holds warnings, and errors about parts that were left out.
 *
 * @example
 * ```ts
 * import { success } from "@tapewise/outcome";
 * success(5).value; // => 5
 * ```
 */
export function success<T>(value: T, issues: readonly Issue[] = []): Success<T> {
  return { ok: true, value, issues };
}

/**
 * A value that could not be made, and why.
 *
 * @example
 * ```ts
 * import { createIssue, defineIssues, failure } from "@tapewise/outcome";
 * const catalogue = defineIssues({ "it-rains": { severity: "error", message: "it rains", expected: "sun" } });
 * failure([createIssue(catalogue, "it-rains")]).ok; // => false
 * ```
 */
export function failure(issues: readonly [Issue, ...Issue[]]): Failure {
  return { ok: false, issues };
}

/**
 * The value of an outcome; this is how each `parseX` is made from its `safeParseX`.
 *
 * @throws {@link IssuesError} with the outcome's issues when there is no value.
 *
 * @example
 * ```ts
 * import { success, unwrap } from "@tapewise/outcome";
 * unwrap(success("M")); // => "M"
 * ```
 */
export function unwrap<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new IssuesError(outcome.issues);
}

/**
 * Whether a list of issues is not empty, told to the type checker, so that it can become a failure.
 *
 * @example
 * ```ts
 * import { hasIssues } from "@tapewise/outcome";
 * hasIssues([]); // => false
 * ```
 */
export function hasIssues(issues: readonly Issue[]): issues is readonly [Issue, ...Issue[]] {
  return issues.length > 0;
}
