import { element, label, line } from "@tapewise/figures";
import { wholePercent, writeSmall } from "../telling/write-figures.ts";
import { PAGE, picture } from "./picture.ts";
import type { ErrorFigure } from "./study-figure.ts";

const TOP = 56;
const ROW = 40;
const LEFT = 210;
/** Room for the words behind the longest bar. */
const WORDS = 130;

/** Shares of variance as bars, each with its standard deviation. */
export function drawErrors({ text, bars }: ErrorFigure, id: string): string {
  const foot = TOP + bars.length * ROW;
  const wide = PAGE.right - WORDS - LEFT;
  return picture(text, id, foot + 54, [
    ...bars.flatMap(({ label: name, sdMm, share }, k) => {
      const y = TOP + k * ROW;
      return [
        label(LEFT - 10, y + 20, name, { "text-anchor": "end" }),
        element("rect", {
          x: LEFT,
          y: y + 4,
          width: wide * share,
          height: ROW - 14,
          fill: "currentColor",
          "fill-opacity": 0.25,
          stroke: "currentColor",
        }),
        label(
          LEFT + wide * share + 8,
          y + 20,
          `${wholePercent(share)} (${writeSmall(sdMm, text.unit)} ${text.unit})`,
        ),
      ];
    }),
    line(LEFT, TOP, LEFT, foot),
    ...[0, 0.25, 0.5, 0.75, 1].map((share) =>
      label(LEFT + wide * share, foot + 18, wholePercent(share), {
        "text-anchor": "middle",
        "font-size": 12,
      }),
    ),
    label(LEFT + wide / 2, foot + 38, `Share of the variance (standard deviation, ${text.unit})`, {
      "text-anchor": "middle",
    }),
  ]);
}
