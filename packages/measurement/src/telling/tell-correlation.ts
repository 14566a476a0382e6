import type { ComponentIcc } from "../reliability/icc-of-components.ts";
import type { ToldSection } from "./told.ts";
import { fixed, fixedEnds, wholePercent } from "./write-figures.ts";

/** Intraclass correlations, with the reason for their form. */
export function tellCorrelation({
  agreement,
  consistency,
  components,
  confidence,
}: ComponentIcc): ToldSection {
  const hasMeasurers = components.terms.includes("measurer");
  const row = (name: string, icc: typeof agreement): readonly string[] => [
    name,
    fixed(icc.value, 3),
    fixedEnds(icc, 3),
  ];
  return {
    id: "correlation",
    title: "Intraclass correlation (ICC)",
    tables: [
      {
        header: ["", "ICC", wholePercent(confidence)],
        rows: hasMeasurers
          ? [row("agreement, ICC(A,1)", agreement), row("consistency, ICC(C,1)", consistency)]
          : [row("one measurer, ICC(1)", agreement)],
        wordColumns: 1,
      },
    ],
    notes: [
      hasMeasurers
        ? "Of single readings. Agreement, also called ICC(2,1), is the form to go by where the next reading may be anybody's: measurers are taken as a sample of those who may measure, and their lasting differences count as error. Consistency, ICC(3,1), leaves those out and is for these measurers only."
        : "Of single readings by one measurer: nobody else's are known, so that other forms have no meaning.",
      `From variance components by restricted maximum likelihood, so that missing cells and repeats are allowed for; intervals are generalised confidence intervals.`,
    ],
    meaning: `Of what differs between single readings of people like these, ${wholePercent(agreement.value)} is people and ${wholePercent(1 - agreement.value)} is error; among people who are more alike it would be less reliable.`,
  };
}
