import { type Comparison, writePercent } from "@tapewise/fit";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { bullets } from "../text/wrap.ts";
import { VERDICT_WORDS } from "./headline.ts";

/** Several packs in a table, the best first, and why each stands before the next. */
export function ranking({ ranked }: Comparison): string[] {
  const rows = ranked.map(({ rank, recommendation }) => [
    String(rank),
    shorten(cleanWord(recommendation.chart), 34),
    shorten(cleanWord(recommendation.pick), 10),
    writePercent(recommendation.probability),
    VERDICT_WORDS[recommendation.verdict],
  ]);
  return [
    ...table(["", "pack", "size", "fits with", "verdict"], rows, ["right", "left", "left", "right", "left"]),
    "",
    // The table itself tells who is likelier to fit; the other reasons it does not tell.
    ...bullets(
      ranked.flatMap(({ rank, beforeNext }) =>
        beforeNext === undefined || (rank > 1 && beforeNext.code === "likelier-fit")
          ? []
          : [beforeNext.sentence],
      ),
    ),
    "",
  ];
}
