import type { MeasurerAgreement } from "../reliability/bland-altman-of-study.ts";
import type { ToldSection, ToldTable, ToldUnit } from "./told.ts";
import { counted, wholePercent, writeSmall, writeSmallEnds } from "./write-figures.ts";

/** More pairs than this make a table that nobody reads. */
const MOST_PAIRS = 10;

/** Bland and Altman's limits of agreement, pair by pair; of many pairs those that agree least. */
export function tellAgreement(pairs: readonly MeasurerAgreement[], unit: ToldUnit): ToldSection | undefined {
  const widest = [...pairs].sort((one, other) => reachOf(other) - reachOf(one));
  const [worst] = widest;
  if (worst === undefined) return undefined;
  const shown = pairs.length > MOST_PAIRS ? widest.slice(0, MOST_PAIRS) : pairs;
  const { multiplier } = worst.limits;
  const method = "method" in worst.limits ? METHODS[worst.limits.method] : METHODS.repeats;
  const left = pairs.length - shown.length;
  return {
    id: "agreement",
    title: "Agreement of measurers (Bland and Altman)",
    tables: [tableOf(shown, unit)],
    notes: [
      `Limits are the mean difference and ${multiplier} standard deviations to either side, for single readings. Intervals: ${method}.`,
      ...(left > 0
        ? [`The ${MOST_PAIRS} pairs that agree least of ${pairs.length}; the other ${left} are in the data.`]
        : []),
    ],
    meaning: meaningOf(worst, pairs.length, unit),
  };
}

const METHODS = {
  exact: "exact, from the noncentral t distribution",
  "approximate-1999": "Bland and Altman's approximation of 1999",
  "approximate-1986": "Bland and Altman's approximation of 1986",
  repeats: "variance estimates recovery, repeats modelled",
} as const;

function tableOf(pairs: readonly MeasurerAgreement[], unit: ToldUnit): ToldTable {
  const [first] = pairs;
  return {
    header: ["first less second", "", unit, first === undefined ? "" : wholePercent(first.limits.confidence)],
    rows: pairs.flatMap(({ first: one, second, limits, points }) => [
      [
        `${one} less ${second}`,
        "mean difference",
        writeSmall(limits.bias.value, unit),
        writeSmallEnds(limits.bias, unit),
      ],
      [
        `(${counted(points.length, "subject")})`,
        "lower limit",
        writeSmall(limits.lowerLimit.value, unit),
        writeSmallEnds(limits.lowerLimit, unit),
      ],
      ["", "upper limit", writeSmall(limits.upperLimit.value, unit), writeSmallEnds(limits.upperLimit, unit)],
    ]),
    wordColumns: 2,
  };
}

function reachOf({ limits }: MeasurerAgreement): number {
  return Math.max(Math.abs(limits.lowerLimit.value), Math.abs(limits.upperLimit.value));
}

function meaningOf({ first, second, limits }: MeasurerAgreement, pairs: number, unit: ToldUnit): string {
  const { bias, lowerLimit, upperLimit } = limits;
  const habit =
    bias.lower > 0 || bias.upper < 0
      ? `${first} reads ${bias.value > 0 ? "longer" : "shorter"} than ${second} by habit`
      : `neither ${first} nor ${second} clearly reads longer by habit`;
  const which = pairs === 1 ? "" : "Of the two who agree least, ";
  const text = `${which}${habit}, and most of their single readings differ by between ${writeSmall(lowerLimit.value, unit)} and ${writeSmall(upperLimit.value, unit)} ${unit}.`;
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
