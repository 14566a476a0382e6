import { dimensionName } from "@tapewise/landmarks";
import type { AllowanceComparison, AllowancePairs } from "../reliability/compare-allowance.ts";
import type { ToldSection, ToldUnit } from "./told.ts";
import { writeSmall } from "./write-figures.ts";

/** A study held against a published limit. */
export function tellAllowance(comparison: AllowanceComparison, unit: ToldUnit): ToldSection {
  const { allowance, sameMeasurer, twoMeasurers } = comparison;
  const row = (name: string, pairs: AllowancePairs | undefined): readonly (readonly string[])[] =>
    pairs === undefined
      ? []
      : [[name, String(pairs.pairs), String(pairs.beyond), writeSmall(pairs.largestMm, unit)]];
  const limit = `${writeSmall(allowance.mm, unit)} ${unit}`;
  const beyond = (sameMeasurer?.beyond ?? 0) + (twoMeasurers?.beyond ?? 0);
  const pairs = (sameMeasurer?.pairs ?? 0) + (twoMeasurers?.pairs ?? 0);
  return {
    id: "allowance",
    title: "Against a published limit",
    tables: [
      {
        header: ["two readings of a subject", "pairs", "beyond", `largest, ${unit}`],
        rows: [...row("by the same measurer", sameMeasurer), ...row("by two measurers", twoMeasurers)],
        wordColumns: 1,
      },
    ],
    notes: [
      `Trained measurers of a survey were allowed ${limit} between two readings of the ${dimensionName(allowance.dimension)} (${allowance.name}; NATICK/TR-11/017, Appendix G, read second-hand).`,
    ],
    meaning:
      beyond === 0
        ? "All pairs of readings keep the limit that a survey set for its trained measurers."
        : `${beyond} of ${pairs} pairs of readings differ by more than a survey allowed its trained measurers: practise until few do.`,
  };
}
