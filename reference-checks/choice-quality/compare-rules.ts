import { addUp, clusteredRatio, difference, type Measured } from "./clustered.ts";
import { type CellTally, type Rule, rules } from "./tally.ts";

/** How the rules did in one cell, or in several put together. */
export interface Comparison {
  readonly name: string;
  /** Share of the trials in which some size fits. */
  readonly served: number;
  /** Share of wrong sizes among those trials. */
  readonly wrong: Readonly<Record<Rule, Measured>>;
  /** Mean distance, in mm, from the body to the size that was taken, over all trials. */
  readonly misfitMm: Readonly<Record<Rule, number>>;
  /** Share of wrong sizes with cut and stature less that of each other rule, trial by trial. */
  readonly beyond: Readonly<Record<Rule, Measured>>;
}

/** Puts cells together, person by person, and compares the rules. */
export function compareRules(name: string, cells: readonly CellTally[]): Comparison {
  const served = addUp(cells.map((cell) => cell.served));
  const trials = cells.reduce((total, cell) => total + cell.trials, 0);
  const wrong = ofEach((rule) => addUp(cells.map((cell) => cell.rules[rule].wrong)));
  const misfit = ofEach((rule) => addUp(cells.map((cell) => cell.rules[rule].misfitMm)));
  return {
    name,
    served: total(served) / trials,
    wrong: ofEach((rule) => clusteredRatio(wrong[rule], served)),
    misfitMm: ofEach((rule) => total(misfit[rule]) / trials),
    beyond: ofEach((rule) => clusteredRatio(difference(wrong["cut-stature"], wrong[rule]), served)),
  };
}

/** The name of a cell. */
export function nameOf({ cell }: CellTally): string {
  return `${cell.chart}, error ${cell.error}, ${cell.rounding}, ${cell.readings} ${cell.readings === 1 ? "reading" : "readings"}`;
}

function ofEach<T>(make: (rule: Rule) => T): Record<Rule, T> {
  return Object.fromEntries(rules.map((rule) => [rule, make(rule)])) as Record<Rule, T>;
}

function total(values: Float64Array): number {
  return values.reduce((a, b) => a + b, 0);
}
