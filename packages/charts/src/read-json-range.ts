import { type Issue, relocateIssue } from "@tapewise/outcome";
import { type LengthReading, safeParseLength } from "@tapewise/units";
import { chartIssue } from "./chart-issue.ts";
import { type Parts, partsOf, type Reading, wrongKind } from "./parts.ts";
import { readCell } from "./read-cell.ts";
import type { Source } from "./source.ts";
import type { Statement } from "./statement.ts";

const ENDS = ["from", "to", "nominal"] as const;
type End = (typeof ENDS)[number];

const FORM = 'text such as "38-43 cm", or an object with from, to or nominal';

/** Reads what a size states of one dimension. None means that nothing is stated or can be read. */
export function readJsonRange(source: Source, reading: Reading): readonly Statement[] {
  return readRange(source, [...ENDS, "also"], reading);
}

function readRange(
  source: Source,
  keys: readonly (End | "also")[],
  { path, issues }: Reading,
): readonly Statement[] {
  if (source.kind === "text") {
    const outcome = readCell(source.value, []);
    issues.push(...outcome.issues.map((issue) => relocateIssue(issue, path, source.place)));
    return outcome.ok ? outcome.value : [];
  }
  if (source.kind !== "object") {
    issues.push(wrongKind(source, "a range", FORM, path));
    return [];
  }
  const parts = partsOf(source, keys, "a range", { path, issues });
  if (parts === undefined) return [];
  const also = parts.get("also");
  const others = also === undefined ? [] : readRange(also.value, ENDS, { path: [...path, "also"], issues });
  const first = readEnds(parts, source, { path, issues });
  return first === undefined ? [] : [first, ...others];
}

function readEnds(
  parts: Parts<End | "also">,
  source: Source,
  { path, issues }: Reading,
): Statement | undefined {
  const found: Issue[] = [];
  const read = (end: End): LengthReading | undefined => readEnd(parts, end, { path, issues: found });
  const from = read("from");
  const to = read("to");
  const nominal = read("nominal");
  issues.push(...found);
  // Half of a range must not pass for an open end.
  if (found.length > 0) return undefined;
  const about = { path, place: source.place };
  if (from === undefined && to === undefined && nominal === undefined) {
    issues.push(chartIssue("chart-range-empty", about));
    return undefined;
  }
  const stated = describe(from, to, nominal);
  if (from !== undefined && to !== undefined && from.mm > to.mm) {
    issues.push(chartIssue("chart-range-reversed", { ...about, received: describe(from, to, undefined) }));
    return undefined;
  }
  const outside =
    (from?.mm ?? 0) > (nominal?.mm ?? Number.POSITIVE_INFINITY) ||
    (to?.mm ?? Number.POSITIVE_INFINITY) < (nominal?.mm ?? 0);
  if (outside) {
    issues.push(chartIssue("chart-nominal-outside", { ...about, received: nominal?.text }));
    return undefined;
  }
  return {
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(nominal === undefined ? {} : { nominal }),
    stated,
  };
}

function readEnd(parts: Parts<End | "also">, end: End, { path, issues }: Reading): LengthReading | undefined {
  const value = parts.get(end)?.value;
  if (value === undefined) return undefined;
  const at = [...path, end];
  if (value.kind !== "text") {
    issues.push(wrongKind(value, "a length", 'text with a unit, such as "38 cm"', at));
    return undefined;
  }
  const outcome = safeParseLength(value.value);
  if (outcome.ok) return outcome.value;
  issues.push(...outcome.issues.map((issue) => relocateIssue(issue, at, value.place)));
  return undefined;
}

/** The ends in the words that a cell would have. */
function describe(
  from: LengthReading | undefined,
  to: LengthReading | undefined,
  nominal: LengthReading | undefined,
): string {
  if (nominal !== undefined) return nominal.text.trim();
  if (from !== undefined && to !== undefined) return `${from.text.trim()} to ${to.text.trim()}`;
  return from === undefined ? `up to ${to?.text.trim()}` : `from ${from.text.trim()}`;
}
