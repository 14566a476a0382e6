import type { Precision, PrecisionFinding } from "../reliability/precision.ts";
import type { ToldSection, ToldUnit } from "./told.ts";
import { wholePercent, writeSmall, writeSmallEnds } from "./write-figures.ts";

/** Repeatability and reproducibility after ISO 5725-2, with its screening. */
export function tellPrecision(precision: Precision, unit: ToldUnit): ToldSection {
  const { repeatability, betweenMm, reproducibilityMm, limitFactor } = precision;
  const { repeatabilityLimitMm, reproducibilityLimitMm } = precision;
  const found = tellFindings(precision);
  const hasMeans = precision.perSubject.some(({ measurers }) => measurers >= 3);
  const screened = hasMeans
    ? "Cochran's test of scatters and Grubbs' of means"
    : "Cochran's test of scatters";
  return {
    id: "precision",
    title: "Precision after ISO 5725-2",
    tables: [
      {
        header: ["", unit, wholePercent(precision.confidence)],
        rows: [
          [
            "sr, one measurer again",
            writeSmall(repeatability.value, unit),
            writeSmallEnds(repeatability, unit),
          ],
          ["sL, between measurers", writeSmall(betweenMm, unit), ""],
          ["sR, any measurer", writeSmall(reproducibilityMm, unit), ""],
          ["r, limit for one measurer", writeSmall(repeatabilityLimitMm, unit), ""],
          ["R, limit for two measurers", writeSmall(reproducibilityLimitMm, unit), ""],
        ],
        wordColumns: 1,
      },
    ],
    notes: [
      `Limits are ${limitFactor.toFixed(2)} times the standard deviation: two readings differ by more in one case of twenty.`,
      found === ""
        ? `Screened by ${screened}: nothing stands apart at 5 %.`
        : `Screened by ${screened}: ${found}. An outlier is beyond 1 %, a straggler beyond 5 %; of many cells some come out so by chance, and nothing was left out for it.`,
    ],
    meaning: `When two readings of somebody by one measurer are more than ${writeSmall(repeatabilityLimitMm, unit)} ${unit} apart, find the bones again and take a third; readings by two measurers may differ by ${writeSmall(reproducibilityLimitMm, unit)} ${unit} without a slip.`,
  };
}

function tellFindings({ variances, means }: Precision): string {
  const tell = (test: string, { kind, subject, measurer }: PrecisionFinding): string =>
    `${subject} by ${measurer} (${kind}, ${test})`;
  return [
    ...variances.map((finding) => tell("Cochran", finding)),
    ...means.map((finding) => tell("Grubbs", finding)),
  ].join("; ");
}
