import { type Interval, interval } from "@tapewise/intervals";
import {
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type IssuePath,
  type Outcome,
  type Place,
  relocateIssue,
  success,
} from "@tapewise/outcome";
import { known } from "./about-chart.ts";
import { chartIssue } from "./chart-issue.ts";
import type { ChartOptions } from "./chart-options.ts";
import { compareStatements } from "./compare-statements.ts";
import { coveredSizes } from "./covered-sizes.ts";
import type { DraftChart, DraftRange, DraftSize } from "./draft.ts";
import { inferNominalIntervals } from "./infer-nominal-intervals.ts";
import type { BeltSize, ChartDimension, Size, SizeChart, SizeRange, SizeRanges } from "./size-chart.ts";
import type { Statement } from "./statement.ts";
import { tidy } from "./tidy.ts";

/**
 * Makes the chart of a draft: second statements are checked, nominal lengths get their intervals, and
 * what the caller knows fills what the text does not say.
 *
 * @throws {@link InvalidArgumentError} when `loneNominalHalfWidth` is not above zero and finite.
 */
export function finishChart(draft: DraftChart, options: ChartOptions): Outcome<SizeChart> {
  const halfWidth = options.loneNominalHalfWidth;
  if (halfWidth !== undefined && !(halfWidth > 0 && Number.isFinite(halfWidth))) {
    throw new InvalidArgumentError("loneNominalHalfWidth", halfWidth, "a finite length above zero");
  }
  const issues: Issue[] = [...draft.issues];
  const sizes = finishRanges(draft.sizes, halfWidth, issues).map(finishSize);
  const belts = finishRanges(draft.belts, halfWidth, issues).map(
    ({ draft: { name }, ranges }): BeltSize => ({
      name,
      ranges,
    }),
  );
  if (sizes.length === 0) issues.push(chartIssue("chart-no-sizes", { path: ["sizes"], place: draft.place }));
  else if (![...sizes, ...belts].some((size) => Object.keys(size.ranges).length > 0)) {
    issues.push(chartIssue("chart-no-dimension", { path: ["sizes"], place: draft.place }));
  } else {
    const about = { ...known(options), ...known(draft.about) };
    if (about.chart === undefined)
      issues.push(chartIssue("chart-unnamed", { path: ["chart"], place: draft.place }));
    const { chart = "unnamed chart", swappable = [], ...rest } = about;
    return success({ chart, ...rest, swappable, sizes, belts }, issues);
  }
  // Never empty: one of the two branches above has just added an issue.
  return hasIssues(issues) ? failure(issues) : failure([chartIssue("chart-no-sizes", {})]);
}

interface FinishedRanges {
  readonly draft: DraftSize;
  readonly ranges: SizeRanges;
}

function finishSize({ draft, ranges }: FinishedRanges): Size {
  const { name, capacityLitres, massGrams, harness } = draft;
  return {
    name,
    covers: draft.covers ?? coveredSizes(name),
    ranges,
    ...(capacityLitres === undefined ? {} : { capacityLitres }),
    ...(massGrams === undefined ? {} : { massGrams }),
    ...(harness === undefined ? {} : { harness }),
  };
}

function finishRanges(
  drafts: readonly DraftSize[],
  halfWidth: number | undefined,
  issues: Issue[],
): readonly FinishedRanges[] {
  const inferred = inferredIntervals(drafts);
  return drafts.map((draft) => {
    const ranges: Partial<Record<ChartDimension, SizeRange>> = {};
    for (const [dimension, range] of draft.ranges) {
      const path = [...draft.path, dimension];
      const [first, ...others] = range.statements;
      for (const other of others) {
        issues.push(
          ...compareStatements(first, other).map((issue) => relocateIssue(issue, path, range.place)),
        );
      }
      const made = statedInterval(first) ?? inferred.get(first) ?? around(first, halfWidth);
      if (made !== undefined) ranges[dimension] = sizeRange(range, made);
      else issues.push(loneNominal(draft, dimension, first, path, range.place));
    }
    return { draft, ranges };
  });
}

function sizeRange({ statements }: DraftRange, made: Interval): SizeRange {
  const stated = statements.map((statement) => statement.stated);
  const nominal = statements[0].nominal;
  return nominal === undefined
    ? { interval: made, basis: "range", stated }
    : { interval: made, basis: "nominal", nominalMm: nominal.mm, stated };
}

function statedInterval({ from, to }: Statement): Interval | undefined {
  if (from === undefined && to === undefined) return undefined;
  return interval(from?.mm ?? Number.NEGATIVE_INFINITY, to?.mm ?? Number.POSITIVE_INFINITY);
}

/** The interval of each lone nominal statement, from all sizes that state the same dimension. */
function inferredIntervals(drafts: readonly DraftSize[]): ReadonlyMap<Statement, Interval> {
  const byDimension = new Map<ChartDimension, Statement[]>();
  for (const draft of drafts) {
    for (const [dimension, { statements }] of draft.ranges) {
      const all = byDimension.get(dimension);
      if (all === undefined) byDimension.set(dimension, [statements[0]]);
      else all.push(statements[0]);
    }
  }
  const inferred = new Map<Statement, Interval>();
  for (const statements of byDimension.values()) {
    const ranges = statements.map(statedInterval).filter((range) => range !== undefined);
    const lone = statements.filter((statement) => statedInterval(statement) === undefined);
    const intervals = inferNominalIntervals(
      lone.map((statement) => statement.nominal?.mm ?? 0),
      ranges,
    );
    lone.forEach((statement, position) => {
      const made = intervals[position];
      if (made !== undefined) inferred.set(statement, made);
    });
  }
  return inferred;
}

function around(statement: Statement, halfWidth: number | undefined): Interval | undefined {
  const middle = statement.nominal?.mm;
  if (middle === undefined || halfWidth === undefined) return undefined;
  return interval(middle - halfWidth, middle + halfWidth);
}

function loneNominal(
  draft: DraftSize,
  dimension: ChartDimension,
  statement: Statement,
  path: IssuePath,
  place: Place | undefined,
): Issue {
  const facts = { size: draft.name, dimension, nominalMm: tidy(statement.nominal?.mm ?? 0) };
  return chartIssue("chart-nominal-alone", { path, place, received: statement.stated, facts });
}
