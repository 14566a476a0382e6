import { speakDimension } from "@tapewise/charts";
import { writeShare } from "@tapewise/coverage";
import type { NextWayRow, ReadingPlan } from "@tapewise/measurement";
import type { PlannedChart, ReadingsPlan } from "../planning/make-plan.ts";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { bullets, wrap } from "../text/wrap.ts";

import { note, sampleLines } from "./sample-lines.ts";
import { fineIn, lengthIn } from "./words.ts";

/** How many readings to take, what averaging brings, and what else helps. */
export function planLines(plan: ReadingsPlan, unit: "cm" | "in"): string[] {
  const { options, lengthMm, charts, people } = plan;
  return [
    ...wrap(
      `Planning readings of the ${speakDimension(options.dimension)}, about ${lengthIn(lengthMm, unit)} long; lengths in ${unit}`,
    ),
    ...errorLines(plan, unit),
    "",
    ...wishLines(plan, unit),
    "What averaging brings",
    ...averagingLines(plan, unit),
    "",
    ...limitLines(plan, unit),
    "",
    ...wayLines(plan, unit),
    ...(charts.length === 0 ? [] : sampleLines(people)),
    ...(charts.length === 0
      ? []
      : note(
          "Lengths of people are taken as normal with the mean and the spread of the survey; the size is picked in which the mean of the readings has most room.",
        )),
  ];
}

function errorLines({ error, basis, conditions }: ReadingsPlan, unit: "cm" | "in"): string[] {
  const how =
    conditions === undefined
      ? "As you state"
      : `By the table of assumptions for a ${conditions.tool?.replaceAll("-", " ")}, ${conditions.measuredBy === "self" ? "held by the person measured" : "held by a helper"}, bones ${conditions.landmarksFoundAfresh ? "found afresh each time" : "found once"}`;
  return [
    ...note(
      `${how}: ${fineIn(error.perReadingMm, unit)} ${unit} of a reading's error averages out, ${fineIn(error.lastingMm, unit)} ${unit} stays in all readings (standard deviations).`,
    ),
    ...(basis === "stated"
      ? []
      : note("Figures of your own, from tapewise study, are worth more: --per-reading and --lasting.")),
  ];
}

function wishLines(plan: ReadingsPlan, unit: "cm" | "in"): string[] {
  const { options, uncertainty, within, charts, instead } = plan;
  const lines = [
    ...(uncertainty === undefined
      ? []
      : [
          tellPlan(
            uncertainty,
            `a standard uncertainty of ${fineIn(options.uncertainty ?? 0, unit)} ${unit}`,
            unit,
          ),
        ]),
    ...(within === undefined
      ? []
      : [
          tellPlan(
            within,
            `a mean within ${fineIn(options.within ?? 0, unit)} ${unit} of the truth, with ${writeShare(options.probability)}`,
            unit,
          ),
        ]),
    ...charts.map((chart) => tellChart(chart, options.chance ?? 0)),
    ...instead.map(
      ({ helper, afresh, count }) =>
        `Another way: ${readings(count)} ${helper ? "by a helper" : "by the same person"}${afresh ? ", who finds the bones afresh each time" : ""}.`,
    ),
  ];
  return lines.length === 0 ? [] : ["What is wanted", ...bullets(lines), ""];
}

function tellPlan(plan: ReadingPlan, wish: string, unit: "cm" | "in"): string {
  if (plan.isReachable) {
    return `For ${wish}: ${readings(plan.count)}; they bring ${fineIn(plan.reachedMm, unit)} ${unit}.`;
  }
  return plan.reason === "lasting"
    ? `For ${wish}: no number of readings is enough, since ${fineIn(plan.floorMm, unit)} ${unit} is left however many are taken.`
    : `For ${wish}: more readings than anybody takes.`;
}

function tellChart({ chart, plan }: PlannedChart, wanted: number): string {
  const name = cleanWord(chart);
  if (plan.isReachable) {
    return `For the right size of ${name} with a chance of ${writeShare(wanted)}: ${readings(plan.count ?? 1)}; the chance is then ${writeShare(plan.chance)}.`;
  }
  const why =
    plan.reason === "sizes"
      ? `its sizes are made for ${writeShare(plan.possibleChance)} of such people, however well they are measured`
      : plan.reason === "lasting"
        ? `with the error that stays it comes to ${writeShare(plan.chanceAtBest)} at best`
        : "it takes more readings than anybody takes";
  return `For the right size of ${name} with a chance of ${writeShare(wanted)}: no number of readings is enough; ${why}.`;
}

function averagingLines({ rows, charts }: ReadingsPlan, unit: "cm" | "in"): string[] {
  return table(
    [
      "readings",
      `uncertainty, ${unit}`,
      "of it stays",
      "gain so far",
      ...charts.map((_, k) => `right size${charts.length > 1 ? ` ${k + 1}` : ""}`),
    ],
    rows.map((row, k) => [
      String(row.count),
      fineIn(row.uncertaintyMm, unit),
      `${(row.lastingShare * 100).toFixed(0)} %`,
      `${(row.gainShare * 100).toFixed(0)} %`,
      ...charts.map(({ chances }) => writeShare(chances[k] ?? 0)),
    ]),
    ["right", "right", "right", "right", ...charts.map(() => "right" as const)],
  ).concat(
    charts.length > 1
      ? ["", ...charts.map(({ chart }, k) => `  ${k + 1} ${shorten(cleanWord(chart), 60)}`)]
      : [],
  );
}

/** What averaging cannot do. */
function limitLines({ error, rows }: ReadingsPlan, unit: "cm" | "in"): string[] {
  const most = rows.at(-1);
  const { lastingMm, perReadingMm } = error;
  const even = lastingMm > 0 ? Math.ceil((perReadingMm / lastingMm) ** 2) : undefined;
  return [
    ...note(
      "Of it stays: the share of the variance that no averaging touches. Gain so far: of all that averaging can ever gain.",
    ),
    ...note(
      even === undefined
        ? "Nothing is said to stay, so every further reading helps. It seldom is so: what all readings err by alike does not show in them."
        : `What averaging cannot do: below ${fineIn(lastingMm, unit)} ${unit} it never comes; ${readings(most?.count ?? 0)} come to ${fineIn(most?.uncertaintyMm ?? 0, unit)} ${unit}. ${even <= 1 ? "Already in one reading" : `From ${even} on`}, what stays is at least half of the variance, and somebody else's reading is worth more than another of the same.`,
    ),
  ];
}

const WAYS: Readonly<Record<NextWayRow["way"], (row: NextWayRow) => string>> = {
  repeat: () => "more of the same",
  "landmarks-afresh": () => "find the bones afresh",
  helper: () => "fetch a helper",
  "other-tool": ({ tool }) => `take another tool: ${tool.replaceAll("-", " ")}`,
};

function wayLines({ ways }: ReadingsPlan, unit: "cm" | "in"): string[] {
  if (ways === undefined) return [];
  const [best] = ways.ways;
  return [
    `After 3 readings (uncertainty ${fineIn(ways.nowMm, unit)} ${unit}), ${ways.further} more`,
    ...table(
      ["", `uncertainty, ${unit}`, "gain", `at best, ${unit}`],
      ways.ways.map((row) => [
        WAYS[row.way](row),
        fineIn(row.uncertaintyMm, unit),
        `${(row.gainShare * 100).toFixed(0)} %`,
        fineIn(row.floorMm, unit),
      ]),
      ["left", "right", "right", "right"],
    ),
    "",
    ...(best === undefined
      ? []
      : note(
          best.way === "helper"
            ? "Fetch a helper: that is worth more than anything you can do alone."
            : `What helps most: ${WAYS[best.way](best)}.`,
        )),
    "",
  ];
}

function readings(count: number): string {
  return `${count} ${count === 1 ? "reading" : "readings"}`;
}
