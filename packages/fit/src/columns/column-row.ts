import type { ColumnPlan } from "./column-plan.ts";

/**
 * One person of a column: the beliefs that are put in, and what comes out. It is filled anew for every person, so
 * that nothing is allocated.
 */
export interface ColumnRow {
  readonly plan: ColumnPlan;
  /** Of each dimension of the plan: what is believed of it. */
  readonly means: Float64Array;
  readonly sds: Float64Array;
  readonly degrees: Float64Array;
  /** For each dimension, the spread after every look that could be taken; looks without a prospect hold its spread now. */
  readonly looks: Float64Array;
  /** Whether a feature of build speaks for the longer harness. */
  hasBuild: boolean;
  /** Whether a reading that binds the size is questioned. */
  isOpen: boolean;
  /** For each size: the probability that it fits, and the expected misfit in mm. */
  readonly probabilities: Float64Array;
  readonly misfits: Float64Array;
  pick: number;
  /** As `columnVerdicts` counts them. */
  verdict: number;
  /** Bits of the reasons that depend on the person. */
  reasons: number;
  /**
   * Whether some decision was so close that the last digits of a figure could turn it. Where an answer has to be
   * the one of `recommend` to the last, ask that.
   */
  isClose: boolean;
  readonly scratch: RowScratch;
}

/** Intermediate results of one person. */
export interface RowScratch {
  /** For each end: P(X < end), P(X > end), E[max(0, end − X)] and E[max(0, X − end)]. */
  readonly below: Float64Array;
  readonly above: Float64Array;
  readonly shortBelow: Float64Array;
  readonly shortAbove: Float64Array;
  /** For each size and dimension the probability inside; 1 where nothing is stated. */
  readonly inside: Float64Array;
  /** For each size, what the ranks go by. */
  readonly fitSteps: Float64Array;
  readonly misfitSteps: Float64Array;
  readonly pair: Float64Array;
  /** For each size, in the dimension that is looked at: its ends, its side of the pick, and the chance of the others. */
  readonly lowers: Float64Array;
  readonly uppers: Float64Array;
  readonly sides: Uint8Array;
  readonly others: Float64Array;
  best: number;
  /** The best of the others; -1 where there is none. */
  other: number;
  isHeld: boolean;
}

/**
 * A row for people of a plan, to be filled in and chosen for one after the other. Nothing is known in it yet: every
 * length is 0 mm, known exactly.
 *
 * @param looksPerDimension - how many looks at one dimension are weighed, as `spreadsAfterLooks` gives them
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { createRow, safeCompileColumns } from "@tapewise/fit";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Demo" });
 * const plan = safeCompileColumns(chart, { read: ["torso-length"] });
 * const row = plan.ok ? createRow(plan.value, 4) : undefined;
 * [row?.means.length, row?.looks.length, row?.probabilities.length]; // => [1, 4, 2]
 * ```
 */
export function createRow(plan: ColumnPlan, looksPerDimension: number): ColumnRow {
  const { sizes, dimensions, tables } = plan;
  const ends = () => new Float64Array(tables.ends.length);
  const below = ends();
  const above = ends();
  [below[1], above[0]] = [1, 1];
  return {
    plan,
    means: new Float64Array(dimensions.length),
    sds: new Float64Array(dimensions.length),
    degrees: new Float64Array(dimensions.length).fill(Number.POSITIVE_INFINITY),
    looks: new Float64Array(dimensions.length * looksPerDimension),
    hasBuild: false,
    isOpen: false,
    probabilities: new Float64Array(sizes.length),
    misfits: new Float64Array(sizes.length),
    pick: 0,
    verdict: 0,
    reasons: 0,
    isClose: false,
    scratch: {
      below,
      above,
      shortBelow: ends(),
      shortAbove: ends(),
      inside: new Float64Array(sizes.length * dimensions.length),
      fitSteps: new Float64Array(sizes.length),
      misfitSteps: new Float64Array(sizes.length),
      pair: new Float64Array(2),
      lowers: new Float64Array(sizes.length),
      uppers: new Float64Array(sizes.length),
      sides: new Uint8Array(sizes.length),
      others: new Float64Array(sizes.length),
      best: 0,
      other: -1,
      isHeld: false,
    },
  };
}
