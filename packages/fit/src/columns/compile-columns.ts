import type { SizeChart } from "@tapewise/charts";
import { everything, hull, type Interval } from "@tapewise/intervals";
import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import { checkPolicy } from "../check-policy.ts";
import type { Choice } from "../choice.ts";
import { choose } from "../choose.ts";
import { explainChart } from "../explain-chart.ts";
import type { Inquiry } from "../inquiry.ts";
import { setsHarnessLength } from "../judged-dimensions.ts";
import { lookAheadScores } from "../look-ahead.ts";
import { rankSizes } from "../rank-sizes.ts";
import type { SizeFit } from "../recommendation.ts";
import { columnIssues } from "./column-issues.ts";
import type { ColumnPlan, ColumnTables } from "./column-plan.ts";
import type { KnownOfPeople } from "./known-of-people.ts";
import { normalTable } from "./normal-table.ts";
import { bitOf } from "./reason-bits.ts";
import { studentTable } from "./student-table.ts";
import { typicalInquiry } from "./typical-inquiry.ts";

/**
 * Makes a chart ready for columns of people: what `recommend` works out for one person at a time, without
 * words, for people of whom the same dimensions are known.
 *
 * Columns cover any number of dimensions whose beliefs are independent of each other, normal or Student's t, known
 * lengths included; open and missing ranges; ties of build and harness; the look-ahead, where the spread after
 * it is given. Codes of failure, for what is left to `recommend`: `columns-belts-apart` (a hip belt that is
 * picked by itself), `columns-beliefs-joint` (two dimensions that a prior binds together),
 * `columns-girth-unclear` (a chart that says "hip" where it or the person has another girth there too), and
 * those of `recommend` for charts that cannot be judged.
 *
 * @throws {@link InvalidArgumentError} for a policy whose figures are out of bounds.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { safeCompileColumns } from "@tapewise/fit";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Demo" });
 * const plan = safeCompileColumns(chart, { read: ["torso-length"] });
 * plan.ok && plan.value.dimensions; // => ["torso-length"]
 * ```
 */
export function safeCompileColumns(chart: SizeChart, known: KnownOfPeople): Outcome<ColumnPlan> {
  const policy = checkPolicy(known.policy);
  const inquiry = typicalInquiry(known, policy);
  const outcome = choose(inquiry, chart);
  if (!outcome.ok) return outcome;
  const choice = outcome.value;
  const refusal = refuse(choice, inquiry);
  if (refusal !== undefined) return failure([refusal]);
  const reasons = choice.fits.map((pick) =>
    explainChart({ ...choice, settled: { ...choice.settled, pick } }, inquiry).map(({ code }) => code),
  );
  return success({
    chart: chart.chart,
    sizes: choice.fits.map(({ size }) => size),
    unjudgedSizes: choice.unjudged,
    dimensions: choice.judged.map(({ charted }) => charted),
    beliefs: choice.judged.map(({ belief }) => belief.dimension),
    policy,
    standingReasons: reasons,
    tables: tabulate(
      choice,
      inquiry,
      reasons.map((codes) => codes.reduce((bits, code) => bits | bitOf(code), 0)),
    ),
  });
}

function refuse({ chart, belt, known, judged }: Choice, { beliefs }: Inquiry): Issue | undefined {
  const about = { path: ["chart"], received: chart.chart };
  if (belt !== undefined) return createIssue(columnIssues, "columns-belts-apart", about);
  const hip = known.find(({ charted }) => charted === "unstated-hip-girth");
  const isShared = known.some((one) => one !== hip && one.belief === hip?.belief);
  const isTwofold = beliefs.of("hip-belt-girth") !== undefined && beliefs.of("hip-girth") !== undefined;
  if (hip !== undefined && (isShared || isTwofold))
    return createIssue(columnIssues, "columns-girth-unclear", about);
  const isJoint = judged.filter(({ belief }) => belief.from !== "readings").length > 1;
  return isJoint ? createIssue(columnIssues, "columns-beliefs-joint", about) : undefined;
}

function tabulate(choice: Choice, { policy }: Inquiry, standing: readonly number[]): ColumnTables {
  const { chart, fits, judged, main, known, charted } = choice;
  const intervals = fits.flatMap((fit) =>
    judged.map((one) => fit.dimensions.find(({ dimension }) => dimension === one.charted)?.range.interval),
  );
  const inColumn = (column: number) => intervals.filter((_, i) => i % judged.length === column);
  const ends: number[] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const starts = [ends.length];
  for (const column of judged.keys()) {
    const stated = inColumn(column).flatMap((one) => (one === undefined ? [] : [one.from, one.to]));
    ends.push(...[...new Set(stated)].filter(Number.isFinite).sort((a, b) => a - b));
    starts.push(ends.length);
  }
  const placeOf = (end: number | undefined, column: number): number => {
    if (end === undefined) return -1;
    if (!Number.isFinite(end)) return end < 0 ? 0 : 1;
    return ends.indexOf(end, starts[column]);
  };
  const hulls = judged.map((_, column) => {
    const [first, ...others] = inColumn(column);
    if (first === undefined || others.some((one) => one === undefined)) return undefined;
    return hull(first, ...others.flatMap((one) => one ?? []));
  });
  const sizes = fits.map((fit) => chart.sizes.find(({ name }) => name === fit.size));
  const setsLength = setsHarnessLength(main.charted);
  return {
    ends: Float64Array.from(ends),
    starts: Int32Array.from(starts),
    lower: Int32Array.from(intervals, (one, i) => placeOf(one?.from, i % judged.length)),
    upper: Int32Array.from(intervals, (one, i) => placeOf(one?.to, i % judged.length)),
    intervals,
    lowest: Int32Array.from(hulls, (one, column) => placeOf(one?.from, column)),
    highest: Int32Array.from(hulls, (one, column) => placeOf(one?.to, column)),
    hulls,
    order: ordered(fits, choice, policy),
    length: lengths(inColumn(0)),
    harness: Uint8Array.from(sizes, (size) => {
      const kind = size?.harness ?? chart.harness;
      return kind === undefined ? 0 : kind === "fixed" ? 1 : 2;
    }),
    capacity: Float64Array.from(fits, ({ capacityLitres }) => capacityLitres ?? Number.NaN),
    standing: Int32Array.from(standing),
    setsLength,
    lacksLength: charted.some(setsHarnessLength) && !known.some((one) => setsHarnessLength(one.charted)),
    normal: normalTable(),
    student: studentTable(),
    scores: Float64Array.from(lookAheadScores()),
  };
}

/** The order of the ranges and names alone: as if all of them fitted alike. */
function ordered(fits: readonly SizeFit[], { main }: Choice, policy: Inquiry["policy"]): Int32Array {
  const alike = fits.map((fit): SizeFit => ({ ...fit, probability: 0, expectedMisfitMm: 0 }));
  // No length is expected anywhere, so that none has room.
  const nowhere = { ...main, belief: { ...main.belief, meanMm: Number.NaN } };
  const ranked = rankSizes(alike, nowhere, policy);
  return Int32Array.from(alike, (fit) => ranked.indexOf(fit));
}

function lengths(ranges: readonly (Interval | undefined)[]): Int32Array {
  const stated = ranges.map((one) => one ?? everything);
  const isShorter = (a: Interval, b: Interval) => a.to < b.to || (a.to === b.to && a.from < b.from);
  return Int32Array.from(stated, (one) => stated.filter((other) => isShorter(other, one)).length);
}
