import { type Stock, type StockShares, writeShare } from "@tapewise/coverage";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";

const ASSIGNMENTS: Readonly<Record<Stock["assignment"], string>> = {
  "any-that-fits": "Whoever fits several sizes takes one that is left",
  "two-sizes": "Whoever fits several sizes takes one of the best two that is left",
  "best-size": "Everybody takes the size with the most room on both sides",
};

/** What to stock of one chart, as a table, with what it rests on. */
export function stockLines(chart: string, stock: Stock, shares: StockShares, asked: number): string[] {
  const indent = { first: "  ", rest: "    " };
  const unserved = stock.expectedUnserved;
  const lacking = unserved < 0.05 ? "fewer than 0.1" : unserved.toFixed(1);
  return [
    ...wrap(`${cleanWord(chart)}: ${stock.total} packs for ${stock.members} members (${stock.people.label})`),
    ...table(
      ["size", "packs", "best size for"],
      stock.sizes.map(({ size, count }, place) => [
        shorten(cleanWord(size), 16),
        String(count),
        writeShare(shares.sizes[place]?.ofPeople ?? 0),
      ]),
      ["left", "right", "right"],
    ),
    "",
    ...wrap(
      `${ASSIGNMENTS[stock.assignment]}. Nobody whom a size fits goes without with a chance of ${writeShare(stock.chance)} (asked: ${writeShare(asked)}), if members are drawn at random from these people.`,
      indent,
    ),
    ...wrap(
      `No size fits ${lacking} of the ${stock.members} members on average; nothing is stocked for them.`,
      indent,
    ),
  ];
}
