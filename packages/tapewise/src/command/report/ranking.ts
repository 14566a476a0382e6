import { type RankedChart, type Recommendation, writePercent } from "@tapewise/fit";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { bullets } from "../text/wrap.ts";
import { jointChance } from "./chance.ts";
import { VERDICT_WORDS } from "./headline.ts";

/** Several packs in a table, the best first, and why each stands before the next. */
export function ranking(ranked: readonly RankedChart[]): string[] {
  const rows = ranked.map(({ rank, recommendation }) => [
    String(rank),
    shorten(cleanWord(recommendation.chart), 34),
    sizeAndBelt(recommendation),
    writePercent(jointChance(recommendation)),
    VERDICT_WORDS[recommendation.verdict],
  ]);
  return [
    ...table(["", "pack", "size", "chance", "verdict"], rows, ["right", "left", "left", "right", "left"]),
    "",
    // The chances of pack and belt together tell who is likelier to fit; the other reasons they do not tell.
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

function sizeAndBelt({ pick, belt }: Recommendation): string {
  const size = shorten(cleanWord(pick), 10);
  return belt === undefined ? size : `${size} + ${shorten(cleanWord(belt.pick), 6)}`;
}
