import type { Lending } from "@tapewise/afterwards";
import { writePercent } from "@tapewise/fit";
import { type LeftOut, nameOfLine } from "../read-members.ts";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { counted } from "./log-lines.ts";
import { note } from "./sample-lines.ts";

/** The most packs to get next that are told: what comes after them would be read by nobody. */
const MOST_NEXT = 5;

/** Who is lent what, who goes without, what stays and what to get next. */
export function lendingLines(lending: Lending, leastChance: number, leftOut: readonly LeftOut[]): string[] {
  const { lent, without, left, next } = lending;
  return [
    `Lent: ${counted(lent.length, "pack", "packs")}`,
    ...(lent.length === 0
      ? []
      : table(
          ["member", "pack", "chance to fit"],
          lent.map(({ member, pack, chance }) => [
            shorten(cleanWord(member), 24),
            shorten(cleanWord(pack), 36),
            writePercent(chance),
          ]),
          ["left", "left", "right"],
        )),
    ...section("Without", [
      ...without.map(({ member, best }) =>
        best === undefined
          ? `${member}: no pack on the shelf fits with ${percentOf(leastChance)} or more`
          : `${member}: ${best} would suit best, and none is left`,
      ),
      ...leftOut.map(
        ({ member, line, reason, code }) =>
          `${member}: left out for an error${member === nameOfLine(line) ? "" : ` in line ${line}`}, ${reason} [${code}]`,
      ),
    ]),
    ...section(
      "Left on the shelf",
      left.map(({ pack, count }) => `${count} of ${pack}`),
    ),
    ...(next.length === 0
      ? []
      : section(
          "To get next, the most worthwhile first",
          next
            .slice(0, MOST_NEXT)
            .map(({ pack, serves }) =>
              serves === undefined
                ? `${pack}: nobody more is served, and some are better`
                : `${pack}: serves ${serves}`,
            ),
        )),
    "",
    ...note("The whole is as good as it can be, which need not be the best for each member."),
  ];
}

function section(title: string, texts: readonly string[]): string[] {
  return texts.length === 0 ? [] : ["", ...wrap(title), ...bullets(texts.map(cleanWord))];
}

/** A chance that was asked for, as it was asked for: 1 is 100 %, and not "more than 99 %". */
function percentOf(chance: number): string {
  return `${Number((chance * 100).toPrecision(6))} %`;
}
