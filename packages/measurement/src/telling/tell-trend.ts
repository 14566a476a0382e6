import type { RepeatTrend, StudyTrend } from "../reliability/repeat-trend.ts";
import type { ToldSection, ToldUnit } from "./told.ts";
import { wholePercent, writeChance, writeSmall, writeSmallEnds } from "./write-figures.ts";

/** How readings change from one repeat to the next. */
export function tellTrend({ all, perMeasurer, confidence }: StudyTrend, unit: ToldUnit): ToldSection {
  const row = (name: string, { slope, pValue }: RepeatTrend): readonly string[] => [
    name,
    writeSmall(slope.value, unit),
    writeSmallEnds(slope, unit),
    pValue === undefined ? "-" : writeChance(pValue),
  ];
  return {
    id: "trend",
    title: "Trend over repeats",
    tables: [
      {
        header: ["", `${unit} a repeat`, wholePercent(confidence), "p"],
        rows: [
          row("everybody", all),
          ...(perMeasurer.length < 2 ? [] : perMeasurer.map(({ measurer, trend }) => row(measurer, trend))),
        ],
        wordColumns: 1,
      },
    ],
    notes: [
      "The common slope within pairs of subject and measurer; repeats are taken to be in the order of time.",
    ],
    meaning: hasTrend(all)
      ? `From one repeat to the next readings get ${all.slope.value > 0 ? "longer" : "shorter"} by about ${writeSmall(Math.abs(all.slope.value), unit)} ${unit}, so that the first and the last do not say the same.`
      : "Readings do not clearly grow or shrink from one repeat to the next: the order in which they are taken does no harm that shows.",
  };
}

/** Whether the interval leaves 0 out. */
export function hasTrend({ slope }: RepeatTrend): boolean {
  return slope.lower > 0 || slope.upper < 0;
}
