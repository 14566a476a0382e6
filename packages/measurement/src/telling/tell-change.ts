import type { DetectableChange } from "../reliability/study-report.ts";
import type { ToldSection, ToldUnit } from "./told.ts";
import { wholePercent, writeSmall } from "./write-figures.ts";

/** The smallest change of a person that is more than error. */
export function tellChange(
  { sameMeasurerMm, anyMeasurerMm }: DetectableChange,
  confidence: number,
  unit: ToldUnit,
): ToldSection | undefined {
  const largest = anyMeasurerMm ?? sameMeasurerMm;
  if (largest === undefined) return undefined;
  const row = (name: string, mm: number | undefined): readonly (readonly string[])[] =>
    mm === undefined ? [] : [[name, writeSmall(mm, unit)]];
  return {
    id: "detectable-change",
    title: "Smallest change that is more than error",
    tables: [
      {
        header: ["one reading before, one after", unit],
        rows: [...row("by the same measurer", sameMeasurerMm), ...row("by any two measurers", anyMeasurerMm)],
        wordColumns: 1,
      },
    ],
    notes: [`Error alone shows a larger change in ${wholePercent(1 - confidence)} of people: z √2 TEM.`],
    meaning: `When somebody who comes back reads ${writeSmall(largest, unit)} ${unit} or more longer or shorter than before, it is hardly error${anyMeasurerMm === undefined ? ", if the same measurer reads both times" : ""}; below that it may well be.`,
  };
}
