import { type Comparison, compareRules, nameOf } from "./compare-rules.ts";
import type { CellTally, LibraryRule } from "./tally.ts";

/** Whether a requirement holds, and by what. */
export interface Finding {
  readonly requirement: string;
  readonly holds: boolean;
  readonly figures: string;
  /** The cells where it fails, the worst first. */
  readonly failures: readonly string[];
}

/** Standard errors beyond which a difference is more than sampling. */
const BEYOND = 2;
const A_QUARTER_LESS = 0.75;
const NEAR_THE_FLOOR = 0.03;
const ONE_POINT = 0.01;

/** Never above "mean and nearest centre" in any cell. */
export function judgeAgainstCentre(cells: readonly CellTally[]): Finding {
  const compared = cells.map((cell) => compareRules(nameOf(cell), [cell]));
  const scoreOf = ({ beyond }: Comparison) => {
    const { value, error } = beyond["nearest-centre"];
    return value <= 0 ? value : value / Math.max(error, Number.MIN_VALUE);
  };
  const above = compared.filter((one) => one.beyond["nearest-centre"].value > 0);
  const worst = worstFirst(
    above.filter((one) => scoreOf(one) > BEYOND),
    scoreOf,
  );
  return {
    requirement: "with cut and stature never above mean and nearest centre",
    holds: worst.length === 0,
    figures: `${cells.length} cells; above it by any amount in ${above.length}, by more than ${BEYOND} paired standard errors in ${worst.length}`,
    failures: (worst.length > 0 ? worst : worstFirst(above, scoreOf)).map(
      (one) =>
        `${one.name}: ${signed(one.beyond["nearest-centre"].value)} ± ${points(one.beyond["nearest-centre"].error)} points`,
    ),
  };
}

/** At least a quarter below "mean and first match" on every kind of chart whose sizes overlap. */
export function judgeAgainstFirst(cells: readonly CellTally[]): Finding {
  const overlapping = cells.filter((cell) => cell.hasOverlap);
  const kinds = [...new Set(overlapping.map(({ cell }) => cell.chart))].map((chart) =>
    compareRules(
      chart,
      overlapping.filter(({ cell }) => cell.chart === chart),
    ),
  );
  const failing = overlapping
    .map((cell) => compareRules(nameOf(cell), [cell]))
    .filter((one) => ratio(one) > A_QUARTER_LESS);
  return {
    requirement: "at least a quarter below mean and first match on every kind of chart with overlap",
    holds: kinds.every((one) => ratio(one) <= A_QUARTER_LESS),
    figures: `${kinds.map((one) => `${one.name}: ${percent(1 - ratio(one))} below`).join("; ")}; single cells that are less than a quarter below: ${failing.length}`,
    failures: worstFirst(failing, ratio).map((one) => `${one.name}: ${percent(1 - ratio(one))} below`),
  };
}

/** Within 3 % of a floor, or within two paired standard errors of it. */
export function judgeAgainstFloor(cells: readonly CellTally[], floor: "floor" | "floor-other-half"): Finding {
  const compared = cells.map((cell) => compareRules(nameOf(cell), [cell]));
  const excess = ({ wrong, beyond }: Comparison) =>
    wrong[floor].value === 0 ? 0 : beyond[floor].value / wrong[floor].value;
  const failing = compared.filter(
    (one) => excess(one) > NEAR_THE_FLOOR && one.beyond[floor].value > BEYOND * one.beyond[floor].error,
  );
  const all = compareRules("all", cells);
  return {
    requirement:
      floor === "floor"
        ? "within 3 % of the floor (same prior), or within two paired standard errors"
        : "within 3 % of the floor whose prior is the other half's people, or within two paired standard errors",
    holds: failing.length === 0,
    figures: `all cells together ${signedPercent(excess(all))} (${signed(all.beyond[floor].value)} ± ${points(all.beyond[floor].error)} points); more than 3 % above it ${compared.filter((one) => excess(one) > NEAR_THE_FLOOR).length} cells, of which beyond sampling ${failing.length}`,
    failures: worstFirst(failing, excess).map((one) => `${one.name}: ${signedPercent(excess(one))}`),
  };
}

/** Expected calibration error at most one point in every cell. */
export function judgeCalibration(cells: readonly CellTally[], rule: LibraryRule): Finding {
  const above = cells.filter((cell) => cell.calibration[rule].ece > ONE_POINT);
  const beyond = cells.filter(
    ({ calibration }) => calibration[rule].ece > calibration[rule].ifPerfectByPerson.upper,
  );
  const both = above.filter((cell) => beyond.includes(cell));
  const mean = (figure: (cell: CellTally) => number) =>
    points(cells.reduce((sum, cell) => sum + figure(cell), 0) / cells.length);
  const worst = worstFirst(above, ({ calibration }) => calibration[rule].ece);
  return {
    requirement: `expected calibration error at most 1 point in every cell (${rule})`,
    holds: above.length === 0,
    figures:
      `mean ${mean(({ calibration }) => calibration[rule].ece)} points, where perfectly calibrated forecasts would show ` +
      `${mean(({ calibration }) => calibration[rule].ifPerfectByPerson.mean)} (trials of one person together) or ` +
      `${mean(({ calibration }) => calibration[rule].ifPerfect.mean)} (each on its own); above 1 point ${above.length} of ${cells.length} cells, ` +
      `above the 95th percentile of perfect forecasts ${beyond.length} (5 % are ${(cells.length / 20).toFixed(0)}), both ${both.length}`,
    failures: worst.map((cell) => {
      const { ece, ifPerfectByPerson } = cell.calibration[rule];
      return `${nameOf(cell)}: ${points(ece)} points (perfect: mean ${points(ifPerfectByPerson.mean)}, 95 % below ${points(ifPerfectByPerson.upper)})`;
    }),
  };
}

function ratio({ wrong }: Comparison): number {
  return wrong["cut-stature"].value / wrong["first-match"].value;
}

function worstFirst<T>(items: readonly T[], badness: (item: T) => number): readonly T[] {
  return items.toSorted((a, b) => badness(b) - badness(a));
}

/** Hundredths, as points. */
export function points(share: number): string {
  return (100 * share).toFixed(2);
}

function signed(share: number): string {
  return `${share > 0 ? "+" : ""}${points(share)}`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function signedPercent(share: number): string {
  return `${share > 0 ? "+" : ""}${percent(share)}`;
}
