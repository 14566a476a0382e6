import { speakDimension } from "@tapewise/charts";
import { type Coverage, type Outside, type Share, writeShare } from "@tapewise/coverage";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { numberIn } from "./words.ts";

/** Whom a shelf of charts serves: the sizes and where people are left out are told for each chart by itself. */
export function shelfLines(title: string, coverage: Coverage): string[] {
  return [
    ...wrap(title),
    ...wrap(sentence(coverage), INDENT),
    "",
    ...shareTable(coverage, jointRows(coverage)),
  ];
}

/** Whom a chart serves, as a table of sizes and a table of who is left out and where. */
export function servedLines(title: string, coverage: Coverage, unit: "cm" | "in"): string[] {
  return [
    ...wrap(cleanWord(title)),
    ...wrap(
      `${sentence(coverage)} Judged by ${coverage.judged.map(speakDimension).join(" and ")}; lengths in ${unit}.`,
      INDENT,
    ),
    "",
    ...shareTable(coverage, [...jointRows(coverage), ...outsideRows(coverage, unit)]),
    "",
    ...table(
      ["size", "fits", "is the only one for"],
      coverage.sizes.map(({ size, served, only }) => [
        shorten(cleanWord(size), 16),
        shareText(served),
        shareText(only),
      ]),
      ["left", "right", "right"],
    ),
  ];
}

const INDENT = { first: "  ", rest: "  " };

function sentence(coverage: Coverage): string {
  const left = [coverage, ...coverage.parts.map((part) => part.coverage)].map(
    ({ byNone, people }) => `${writeShare(byNone.share)} of ${people.label}`,
  );
  return `Leaves out ${left.join(", ")}.`;
}

type Group = readonly [name: string, coverage: Coverage];

/** Everybody, and the parts of a mixture. */
function groupsOf(coverage: Coverage): readonly Group[] {
  const parts = coverage.parts.map((part): Group => [part.coverage.people.label, part.coverage]);
  return [[parts.length === 0 ? coverage.people.label : "all", coverage], ...parts];
}

type Row = readonly [name: string, of: (group: Coverage) => Share];

function shareTable(coverage: Coverage, rows: readonly Row[]): string[] {
  const groups = groupsOf(coverage);
  return table(
    ["", ...groups.map(([name]) => name)],
    rows.map(([name, of]) => [
      name,
      // Bands of the parts would not fit on a line; they are in the output for programs.
      ...groups.map(([, group], place) => (place === 0 ? shareText(of(group)) : writeShare(of(group).share))),
    ]),
    ["left", ...groups.map(() => "right" as const)],
  );
}

function jointRows({ bySeveral }: Coverage): readonly Row[] {
  const split: readonly Row[] = [
    ["  by one size", ({ byOne }) => byOne],
    ["  by several", (group) => group.bySeveral],
  ];
  return [
    ["served", ({ served }) => served],
    ...(bySeveral.share > 0 ? split : []),
    ["left out", ({ byNone }) => byNone],
  ];
}

function outsideRows(coverage: Coverage, unit: "cm" | "in"): readonly Row[] {
  return coverage.outside.flatMap((outside, place): readonly Row[] => {
    const beside =
      (of: (one: Outside) => Share | undefined) =>
      (group: Coverage): Share => {
        const found = group.outside[place];
        return (found === undefined ? undefined : of(found)) ?? { share: 0 };
      };
    const name = coverage.outside.length === 1 ? "" : `${speakDimension(outside.dimension)} `;
    const below: Row = [`  ${name}below the range`, beside((one) => one.below)];
    const above: Row = [`  ${name}above the range`, beside((one) => one.above)];
    return [
      ...(outside.below.share > 0 ? [below] : []),
      ...outside.gaps.map(
        ({ within }, gap): Row => [
          `  ${name}in the gap ${numberIn(within.from, unit)} to ${numberIn(within.to, unit)}`,
          beside(({ gaps }) => gaps[gap]?.people),
        ],
      ),
      ...(outside.above.share > 0 ? [above] : []),
    ];
  });
}

/** A share with its band, where there is one: "18.9 % (17.0 to 21.1)". */
function shareText({ share, low, high }: Share): string {
  if (low === undefined || high === undefined) return writeShare(share);
  const tenths = (value: number): string => (Math.round(value * 1000) / 10).toFixed(1);
  return tenths(low) === tenths(high)
    ? writeShare(share)
    : `${writeShare(share)} (${tenths(low)} to ${tenths(high)})`;
}
