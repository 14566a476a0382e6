import type { ChartOffset, ExpectedReturns, ReturnShares, ReturnsRequest } from "@tapewise/afterwards";
import { type ChartDimension, speakDimension } from "@tapewise/charts";
import { writeShare } from "@tapewise/coverage";
import { cleanWord } from "../text/clean.ts";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { signed } from "./learned-lines.ts";
import { note } from "./sample-lines.ts";
import { lengthIn } from "./words.ts";

/** Offsets by dimension, as they are asked about. */
export type Offsets = ReturnsRequest["offsets"];

/** What part will come back, as a table, and what a relabelled chart would save. */
export function returnsLines(
  chart: string,
  returns: ExpectedReturns,
  offsets: Offsets,
  unit: "cm" | "in",
): string[] {
  const { people, judged, printed, relabelled, saved, method, standardError } = returns;
  const known = judged.flatMap(({ charted }) => {
    const offset = offsets[charted];
    return offset === undefined ? [] : [{ dimension: charted, offset }];
  });
  const readings = judged.map(
    ({ dimension, uncertaintyMm }) => `${speakDimension(dimension)} to ${lengthIn(uncertaintyMm, unit)}`,
  );
  const drawn =
    method === "drawn"
      ? ` People were drawn at random; standard error of what is exchanged ${writeShare(standardError.printed)}.`
      : "";
  return [
    ...wrap(cleanWord(`${chart}: what comes back from ${people.label}`)),
    ...table(
      ["chosen by", "fits", "exchanged", "no size fits"],
      known.length === 0
        ? [row("the chart as printed", printed)]
        : [row("the chart as printed", printed), row("a chart relabelled", relabelled)],
      ["left", "right", "right", "right"],
    ),
    "",
    ...(known.length === 0
      ? note("The ranges are taken to sit where they are printed; --offset or --log says otherwise.")
      : [
          ...known.flatMap(({ dimension, offset }) => note(offsetWords(dimension, offset, unit))),
          ...note(savedWords(saved)),
        ]),
    ...note(`People read their ${readings.join(", ")} (standard uncertainty).${drawn}`),
    ...note(
      "Everybody whom a size does not fit is taken to exchange it, and nobody else: an upper bound of exchanges about fit.",
    ),
  ];
}

function row(what: string, { kept, exchanged, sentBack }: ReturnShares): string[] {
  return [what, ...[kept, exchanged, sentBack].map(writeShare)];
}

function offsetWords(
  dimension: ChartDimension,
  { mm, uncertaintyMm = 0 }: ChartOffset,
  unit: "cm" | "in",
): string {
  const doubt = uncertaintyMm === 0 ? "" : `, standard uncertainty ${lengthIn(uncertaintyMm, unit)}`;
  return `The ${speakDimension(dimension)} comes out ${signed(mm, unit)} ${unit} against what is printed${doubt}.`;
}

function savedWords(saved: number): string {
  const points = Math.abs(saved * 100).toFixed(1);
  if (points === "0.0") return "A relabelled chart would change next to nothing.";
  return saved > 0
    ? `A relabelled chart would save ${points} exchanges in a hundred packs.`
    : `A relabelled chart would cost ${points} exchanges more in a hundred packs, for more people find a size in it.`;
}
