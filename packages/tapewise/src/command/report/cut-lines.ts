import { speakDimension } from "@tapewise/charts";
import { type SizeCuts, writeShare } from "@tapewise/coverage";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { lengthIn, numberIn } from "./words.ts";

/** Where sizes are best cut, and what each further one brings. */
export function cutLines(cuts: SizeCuts, unit: "cm" | "in"): string[] {
  const { count, goal, spanMm, dimension, people, ranges, growth } = cuts;
  const isFixed = spanMm === 0;
  const sizes = count === 1 ? "size" : "sizes";
  const what = isFixed
    ? `${count} ${sizes} of a fixed length`
    : `${count} ${sizes} of ${lengthIn(spanMm, unit)}`;
  const aim = goal === "served" ? "to serve as many as possible" : "to be as near to everybody as possible";
  return [
    ...wrap(`${what} for ${people.label}, cut by ${speakDimension(dimension)} ${aim}; lengths in ${unit}`),
    ...table(
      ["", isFixed ? "length" : "range", ...(isFixed ? [] : ["serves"]), "nearest for"],
      ranges.map(({ fromMm, toMm, within, nearest }, place) => [
        String(place + 1),
        isFixed ? numberIn(fromMm, unit) : `${numberIn(fromMm, unit)} to ${numberIn(toMm, unit)}`,
        ...(isFixed ? [] : [writeShare(within)]),
        writeShare(nearest),
      ]),
      ["right", "right", "right", "right"],
    ),
    "",
    "What more sizes bring, each number cut at its best",
    ...table(
      ["sizes", ...(isFixed ? [] : ["served"]), `expected distance to a size, ${unit}`],
      growth.map((plan) => [
        String(plan.count),
        ...(isFixed ? [] : [writeShare(plan.served)]),
        numberIn(plan.expectedMisfitMm, unit),
      ]),
      ["right", "right", "right"],
    ),
  ];
}
