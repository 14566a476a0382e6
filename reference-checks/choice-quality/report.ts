import type { Calibration } from "./calibration.ts";
import { type Comparison, compareRules } from "./compare-rules.ts";
import {
  type Finding,
  judgeAgainstCentre,
  judgeAgainstFirst,
  judgeAgainstFloor,
  judgeCalibration,
  points,
} from "./judge.ts";
import { type CellTally, type LibraryRule, libraryRules, type Rule, rules } from "./tally.ts";

/** One run of the study. */
export interface Run {
  readonly title: string;
  readonly note: string;
  readonly cells: readonly CellTally[];
}

const HEADS: Readonly<Record<Rule, string>> = {
  "first-match": "first match",
  "nearest-centre": "nearest centre",
  "no-prior": "no prior",
  cut: "cut",
  "cut-stature": "cut + stature",
  floor: "floor",
  "floor-other-half": "floor, other half",
  "floor-misfit": "least misfit",
};

/** The verdicts on one run. */
export function findingsOf(cells: readonly CellTally[]): readonly Finding[] {
  return [
    judgeAgainstCentre(cells),
    judgeAgainstFirst(cells),
    judgeAgainstFloor(cells, "floor"),
    judgeAgainstFloor(cells, "floor-other-half"),
    judgeCalibration(cells, "cut-stature"),
    judgeCalibration(cells, "cut"),
  ];
}

/** A run as Markdown: rules, misfit, calibration, verdicts. */
export function reportRun({ title, note, cells }: Run): string {
  const groups = groupsOf(cells).map(([name, members]) => compareRules(name, members));
  return [
    `## ${title}`,
    "",
    note,
    "",
    "### Wrong sizes among those whom some size fits, in %, with standard error clustered by person",
    "",
    table(
      ["cells", "served", ...rules.map((rule) => HEADS[rule]), "less floor (paired)"],
      groups.map((group) => [
        group.name,
        points(group.served),
        ...rules.map((rule) => withError(group.wrong[rule])),
        withError(group.beyond.floor),
      ]),
    ),
    "",
    "### Mean misfit in mm, over everyone",
    "",
    table(
      ["cells", ...rules.map((rule) => HEADS[rule])],
      groups.map((group) => [group.name, ...rules.map((rule) => group.misfitMm[rule].toFixed(3))]),
    ),
    "",
    "### Calibration over everyone, in points",
    "",
    calibrationTable(cells),
    "",
    "### Stated against observed by tenth of each cell's forecasts, all cells together, in %",
    "",
    decileTable(cells),
    "",
    ...mistakenTables(cells),
    "### Verdicts",
    "",
    ...findingsOf(cells).flatMap(writeFinding),
  ].join("\n");
}

/** A run as plain data. */
export function dataOf({ title, cells }: Run): unknown {
  return {
    title,
    findings: findingsOf(cells),
    groups: groupsOf(cells).map(([name, members]) => compareRules(name, members)),
    cells: cells.map((cell): unknown => {
      const { served, wrong, misfitMm, beyond }: Comparison = compareRules("", [cell]);
      const { calibration, mistaken } = cell;
      return { ...cell.cell, trials: cell.trials, served, wrong, misfitMm, beyond, calibration, mistaken };
    }),
  };
}

function groupsOf(cells: readonly CellTally[]): readonly (readonly [string, readonly CellTally[]])[] {
  const by = (label: string, key: (cell: CellTally) => string) =>
    [...groupBy(cells, key)].map(([value, members]) => [`${label} ${value}`, members] as const);
  return [
    ["all", cells],
    ...by("chart", ({ cell }) => cell.chart),
    ...by("error", ({ cell }) => cell.error),
    ...by("rounding", ({ cell }) => cell.rounding),
    ...by("readings", ({ cell }) => String(cell.readings)),
  ];
}

function calibrationTable(cells: readonly CellTally[]): string {
  const rows = groupsOf(cells).flatMap(([name, members]) =>
    libraryRules.map((rule) => calibrationRow(name, rule, members)),
  );
  return table(
    [
      "cells",
      "rule",
      "observed − stated",
      "mean ECE",
      "if perfect",
      "worst cell",
      "cells above 1",
      "above 95 % of perfect",
    ],
    rows,
  );
}

function calibrationRow(name: string, rule: LibraryRule, cells: readonly CellTally[]): readonly string[] {
  const all = cells.map(({ calibration }) => calibration[rule]);
  return [
    name,
    HEADS[rule],
    points(mean(all.map(({ overall }) => overall.observed - overall.stated))),
    points(mean(all.map(({ ece }) => ece))),
    points(mean(all.map(({ ifPerfectByPerson }) => ifPerfectByPerson.mean))),
    points(Math.max(...all.map(({ ece }) => ece))),
    `${all.filter(({ ece }) => ece > 0.01).length} of ${all.length}`,
    String(all.filter(({ ece, ifPerfectByPerson }) => ece > ifPerfectByPerson.upper).length),
  ];
}

function decileTable(cells: readonly CellTally[]): string {
  const all = cells.map(({ calibration }) => calibration);
  const column = (rule: LibraryRule, k: number) => {
    const groups = all.flatMap((calibration) => calibration[rule].deciles[k] ?? []);
    return `${points(mean(groups.map(({ stated }) => stated)))} / ${points(mean(groups.map(({ observed }) => observed)))}`;
  };
  return table(
    ["tenth", ...libraryRules.map((rule) => HEADS[rule])],
    Array.from({ length: 10 }, (_, k) => [String(k + 1), ...libraryRules.map((rule) => column(rule, k))]),
  );
}

function mistakenTables(cells: readonly CellTally[]): readonly string[] {
  const tried = cells.filter(({ mistaken }) => mistaken.length > 0);
  if (tried.length === 0) return [];
  const pairs = tried.flatMap((cell) => [
    { truth: cell.cell.error, stated: cell.cell.error, calibration: cell.calibration["cut-stature"] },
    ...cell.mistaken.map(({ stated, calibration }) => ({ truth: cell.cell.error, stated, calibration })),
  ]);
  const rows = [...groupBy(pairs, ({ truth, stated }) => `${truth} ${stated}`).values()].map((members) => {
    const all: readonly Calibration[] = members.map(({ calibration }) => calibration);
    return [
      members[0]?.truth ?? "",
      members[0]?.stated ?? "",
      points(mean(all.map(({ overall }) => overall.stated))),
      points(mean(all.map(({ overall }) => overall.observed))),
      points(mean(all.map(({ ece }) => ece))),
      points(Math.max(...all.map(({ ece }) => ece))),
    ];
  });
  return [
    "### Where the stated error is not the true one: cut and stature, cells of 1 and 3 readings, in points",
    "",
    table(["true error", "stated error", "stated", "observed", "mean ECE", "worst cell"], rows),
    "",
  ];
}

function writeFinding({ requirement, holds, figures, failures }: Finding): readonly string[] {
  return [
    `- **${holds ? "holds" : "FALLS SHORT"}**: ${requirement}. ${figures}.`,
    ...failures.slice(0, 5).map((failure) => `  - ${failure}`),
  ];
}

function withError({ value, error }: { readonly value: number; readonly error: number }): string {
  return `${points(value)} ± ${points(error)}`;
}

function groupBy<T>(items: readonly T[], key: (item: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return groups;
}

function mean(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0) / values.length;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map((_, i) => (i === 0 ? "---" : "---:"))), ...rows.map(line)].join("\n");
}
