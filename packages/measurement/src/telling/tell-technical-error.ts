import type { TechnicalError, Tem } from "../reliability/tem.ts";
import type { ToldSection, ToldUnit } from "./told.ts";
import { fixed, fixedEnds, wholePercent, writeSmall, writeSmallEnds } from "./write-figures.ts";

/** Technical errors of measurement, absolute and relative, with reliability. */
export function tellTechnicalError(error: TechnicalError, unit: ToldUnit): ToldSection {
  const { intra, inter, total, perMeasurer, summedTotalMm } = error;
  const row = (name: string, tem: Tem | undefined): readonly (readonly string[])[] =>
    tem === undefined
      ? []
      : [
          [
            name,
            writeSmall(tem.mm.value, unit),
            writeSmallEnds(tem.mm, unit),
            fixed(tem.relative.value, 2),
            fixedEnds(tem.relative, 2),
            tem.reliability === undefined ? "-" : fixed(tem.reliability, 3),
          ],
        ];
  const confidence = wholePercent(error.confidence);
  return {
    id: "technical-error",
    title: "Technical error of measurement (TEM)",
    tables: [
      {
        header: ["", `TEM, ${unit}`, confidence, "TEM, %", confidence, "reliability"],
        rows: [
          ...row("within measurers", intra),
          ...row("between measurers", inter),
          ...row("total, anybody", total),
          ...(perMeasurer.length < 2
            ? []
            : perMeasurer.flatMap(({ measurer, tem }) => row(`only ${measurer}`, tem))),
        ],
        wordColumns: 1,
      },
    ],
    notes: [
      `TEM is the standard deviation of one reading; in per cent, of the mean. Reliability is 1 less TEM² over the variance of all readings, so that it is larger among people who differ more.`,
      ...(summedTotalMm === undefined
        ? []
        : [
            `The total counts the error within a measurer once; the published sum of squares, which counts it twice, gives ${writeSmall(summedTotalMm, unit)} ${unit}.`,
          ]),
    ],
    meaning: meaningOf(error, unit),
  };
}

function meaningOf({ intra, inter, total }: TechnicalError, unit: ToldUnit): string {
  const about = (tem: Tem): string => `${writeSmall(tem.mm.value, unit)} ${unit}`;
  if (intra !== undefined && total !== undefined) {
    return `About two of three single readings lie within ${about(intra)} of what the same measurer would read on average, and within ${about(total)} of what measurers like these would.`;
  }
  if (intra !== undefined) {
    return `About two of three single readings lie within ${about(intra)} of what the same measurer would read on average; what another one would read is not known.`;
  }
  if (inter !== undefined) {
    return `About two of three single readings lie within ${about(inter)} of what measurers like these would read on average.`;
  }
  return "The study does not tell how far a reading is off.";
}
