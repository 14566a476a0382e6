import { element, label, line } from "@tapewise/figures";
import { writeSmall } from "../telling/write-figures.ts";
import { PAGE, picture } from "./picture.ts";
import { plotScale } from "./plot-scale.ts";
import type { AgreementFigure } from "./study-figure.ts";

const TOP = 50;
const FOOT = 330;
/** Room for the words at the ends of the lines. */
const WORDS = 150;
const NAMES = ["lower limit", "mean difference", "upper limit"] as const;

/** Differences over means, with three lines and their bands. */
export function drawAgreement({ text, points, lines }: AgreementFigure, id: string): string {
  const right = PAGE.right - WORDS;
  const x = plotScale(
    points.map(({ mean }) => mean),
    text.unit,
    [PAGE.left, right],
    9,
  );
  const ends = lines.flatMap(({ lower, upper }) => [lower, upper]);
  const y = plotScale([...points.map(({ difference }) => difference), ...ends, 0], text.unit, [FOOT, TOP], 9);
  return picture(text, id, FOOT + 54, [
    ...lines.flatMap(({ value, lower, upper }, k) => [
      element("rect", {
        x: PAGE.left,
        y: y.at(upper),
        width: right - PAGE.left,
        height: y.at(lower) - y.at(upper),
        fill: "currentColor",
        "fill-opacity": 0.08,
      }),
      line(PAGE.left, y.at(value), right, y.at(value), {
        "stroke-width": 1.6,
        ...(k === 1 ? {} : { "stroke-dasharray": "7 4" }),
      }),
      label(right + 8, y.at(value) + 4, `${NAMES[k] ?? ""} ${writeSmall(value, text.unit)}`, {
        "font-size": 12,
      }),
    ]),
    line(PAGE.left, y.at(0), right, y.at(0), { "stroke-opacity": 0.4 }),
    ...points.map(({ mean, difference }) =>
      element("circle", {
        cx: x.at(mean),
        cy: y.at(difference),
        r: 4,
        fill: "currentColor",
        "fill-opacity": 0.2,
        stroke: "currentColor",
      }),
    ),
    line(PAGE.left, FOOT, right, FOOT),
    ...x.marks.map(({ mm, text: words }) => label(x.at(mm), FOOT + 18, words, { "text-anchor": "middle" })),
    label((PAGE.left + right) / 2, FOOT + 38, `Mean of the two (${text.unit})`, { "text-anchor": "middle" }),
    line(PAGE.left, TOP, PAGE.left, FOOT),
    ...y.marks.map(({ mm, text: words }) =>
      label(PAGE.left - 8, y.at(mm) + 4, words, { "text-anchor": "end" }),
    ),
    label(30, (TOP + FOOT) / 2, `Difference (${text.unit})`, {
      "text-anchor": "middle",
      transform: `rotate(-90 30 ${(TOP + FOOT) / 2})`,
    }),
  ]);
}
