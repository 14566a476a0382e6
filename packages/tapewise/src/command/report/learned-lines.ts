import type { ChangedPicks, CorrectedChart, LearnedChart } from "@tapewise/afterwards";
import { type ChartDimension, speakDimension } from "@tapewise/charts";
import { writePercent } from "@tapewise/fit";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { counted } from "./log-lines.ts";
import { note } from "./sample-lines.ts";
import { numberIn } from "./words.ts";

/** What was learned of one chart and of its maker. */
export interface LearnedReport {
  readonly chart: string;
  readonly maker?: string;
  readonly rows: number;
  readonly correction: CorrectedChart;
  readonly ofMaker: readonly { readonly dimension: ChartDimension; readonly learned: LearnedChart }[];
  /** From this probability on that charts are not as printed, their ranges are moved. */
  readonly sureProbability: number;
  readonly changed?: ChangedPicks;
}

/** How far a chart seems off, and whether that is sure enough to change choices. */
export function learnedLines(report: LearnedReport, unit: "cm" | "in"): string[] {
  const { chart, maker, rows, correction, ofMaker, sureProbability, changed } = report;
  const { known, corrections, ranges } = correction;
  const head = wrap(cleanWord(`${chart}: ${counted(rows, "outcome", "outcomes")} in the log`));
  if (rows === 0 && known.length === 0) {
    return [...head, ...note("No outcome tells of it: taken as printed.")];
  }
  if (known.length === 0) {
    return [...head, ...note("None of them says on which side of a range a body was: taken as printed.")];
  }
  const moved = new Set(corrections.map(({ dimension }) => dimension));
  return [
    ...head,
    ...learnedTable("of this chart", known, unit),
    "",
    ...(ofMaker.length === 0 ? [] : [...learnedTable("of its maker", ofMaker, unit), ""]),
    ...known.flatMap(({ dimension, learned }) =>
      note(
        moved.has(dimension)
          ? `The ${speakDimension(dimension)}: sure enough, so that choices go by moved ranges.`
          : `The ${speakDimension(dimension)}: not sure enough to change choices (${writePercent(1 - learned.asPrintedProbability)}; from ${writePercent(sureProbability)} on).`,
      ),
    ),
    ...(ranges.length === 0
      ? []
      : [
          "",
          ...table(
            ["size", "what", `printed, ${unit}`, `by outcomes, ${unit}`],
            ranges.map(({ size, dimension, printed, corrected }) => [
              shorten(cleanWord(size), 12),
              speakDimension(dimension),
              rangeIn(printed, unit),
              rangeIn(corrected, unit),
            ]),
            ["left", "left", "right", "right"],
          ),
        ]),
    ...(changed === undefined ? [] : ["", ...changedLines(changed)]),
    ...(maker === undefined ? note("The chart names no maker: nothing of it speaks for other charts.") : []),
  ];
}

function learnedTable(
  title: string,
  rows: readonly { readonly dimension: ChartDimension; readonly learned: LearnedChart }[],
  unit: "cm" | "in",
): string[] {
  return table(
    [title, "from", `offset, ${unit} (90 %)`, "width x (90 %)", "off with"],
    rows.map(({ dimension, learned }) => {
      const { outcomes, offsetMm, widthFactor, asPrintedProbability } = learned;
      return [
        shorten(speakDimension(dimension), 16),
        String(outcomes),
        `${signed(offsetMm.mean, unit)} (${signed(offsetMm.lower, unit)} to ${signed(offsetMm.upper, unit)})`,
        `${widthFactor.mean.toFixed(2)} (${widthFactor.lower.toFixed(2)} to ${widthFactor.upper.toFixed(2)})`,
        shortPercent(1 - asPrintedProbability),
      ];
    }),
    ["left", "right", "right", "right", "right"],
  );
}

/** ">99 %" where a sentence has "more than 99 %". */
function shortPercent(probability: number): string {
  return writePercent(probability).replace("more than ", ">").replace("less than ", "<");
}

/** An offset with its sign: above 0 the packs come out longer than printed. */
export function signed(mm: number, unit: "cm" | "in"): string {
  const text = numberIn(Math.abs(mm), unit);
  return Number(text) === 0 ? text : `${mm < 0 ? "-" : "+"}${text}`;
}

function rangeIn({ from, to }: { readonly from: number; readonly to: number }, unit: "cm" | "in"): string {
  if (!Number.isFinite(from) && !Number.isFinite(to)) return "any";
  if (!Number.isFinite(from)) return `up to ${numberIn(to, unit)}`;
  if (!Number.isFinite(to)) return `from ${numberIn(from, unit)}`;
  return `${numberIn(from, unit)} to ${numberIn(to, unit)}`;
}

function changedLines({ people, changed, moves }: ChangedPicks): string[] {
  return [
    ...note(`Of ${counted(people, "member", "members")}, ${changed} would be given another size.`),
    ...bullets(
      moves.map((move) => `${move.from} to ${move.to}: ${counted(move.people, "member", "members")}`),
      "    ",
    ),
  ];
}
