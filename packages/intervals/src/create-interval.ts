import {
  createIssue,
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { formatInterval } from "./format-interval.ts";
import type { Interval } from "./interval.ts";
import { intervalsIssues } from "./issues.ts";

/** Whether the bounds themselves belong. Left out: a finite bound belongs, an infinite one does not. */
export interface IntervalEnds {
  readonly fromClosed?: boolean;
  readonly toClosed?: boolean;
}

/**
 * An interval whose bounds the program itself chose. For bounds that a user gave, use
 * {@link safeInterval}, which says what is wrong with them.
 *
 * Both bounds are in the same unit, whichever the caller uses throughout; `-Infinity` and `Infinity`
 * stand for "no bound". Finite bounds belong to the interval unless `ends` says otherwise.
 *
 * @throws {@link InvalidArgumentError} for whatever {@link safeInterval} reports.
 *
 * @example
 * ```ts
 * import { formatInterval, interval } from "@tapewise/intervals";
 * interval(430, 480); // => { from: 430, to: 480, fromClosed: true, toClosed: true }
 * formatInterval(interval(430, 480, { toClosed: false })); // => "[430, 480)"
 * ```
 */
export function interval(from: number, to: number, ends: IntervalEnds = {}): Interval {
  const outcome = safeInterval(from, to, ends);
  if (outcome.ok) return outcome.value;
  const [issue] = outcome.issues;
  throw new InvalidArgumentError(issue.path.join(".") || "an interval", issue.received, issue.expected);
}

/**
 * An interval of bounds that a user gave, or every reason why they make none. Bounds are never
 * swapped or moved; only a negative zero becomes zero, which is the same number.
 *
 * Issue codes: `interval-bound-not-a-number`; `interval-bounds-reversed` (the lower bound is above the
 * upper one); `interval-empty` (equal bounds that do not both belong); `interval-infinity-closed`.
 * Their paths are `from`, `to`, `fromClosed`, `toClosed`, or empty for the interval as a whole.
 *
 * @example
 * ```ts
 * import { safeInterval } from "@tapewise/intervals";
 * const reversed = safeInterval(480, 430);
 * reversed.issues[0]?.message; // => "the upper bound 430 is below the lower bound 480"
 * safeInterval(430, 430, { toClosed: false }).issues[0]?.code; // => "interval-empty"
 * ```
 */
export function safeInterval(from: number, to: number, ends: IntervalEnds = {}): Outcome<Interval> {
  const noNumbers = [...issuesOfBound("from", from), ...issuesOfBound("to", to)];
  if (hasIssues(noNumbers)) return failure(noNumbers);

  const made: Interval = {
    from: from + 0, // turns -0 into 0
    to: to + 0,
    fromClosed: ends.fromClosed ?? Number.isFinite(from),
    toClosed: ends.toClosed ?? Number.isFinite(to),
  };
  const issues = [
    ...issuesOfEnd("fromClosed", from, made.fromClosed),
    ...issuesOfEnd("toClosed", to, made.toClosed),
  ];
  if (from > to) {
    const facts = { from: printable(from), to: printable(to) };
    issues.push(
      createIssue(intervalsIssues, "interval-bounds-reversed", { path: ["to"], received: to, facts }),
    );
  }
  if (from === to && !(made.fromClosed && made.toClosed)) {
    issues.push(createIssue(intervalsIssues, "interval-empty", { received: formatInterval(made) }));
  }
  return hasIssues(issues) ? failure(issues) : success(made);
}

function issuesOfBound(path: string, bound: number): readonly Issue[] {
  // The type asks for a number, but bounds often come from parsed files.
  if (typeof bound === "number" && !Number.isNaN(bound)) return [];
  return [createIssue(intervalsIssues, "interval-bound-not-a-number", { path: [path], received: bound })];
}

function issuesOfEnd(path: string, bound: number, closed: boolean): readonly Issue[] {
  if (Number.isFinite(bound) || !closed) return [];
  return [createIssue(intervalsIssues, "interval-infinity-closed", { path: [path], received: closed })];
}

/** Facts must survive JSON, which has no infinities. */
function printable(bound: number): number | string {
  return Number.isFinite(bound) ? bound : String(bound);
}
