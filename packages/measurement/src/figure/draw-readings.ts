import { element, label, line, shorten } from "@tapewise/figures";
import { PAGE, picture } from "./picture.ts";
import { plotScale } from "./plot-scale.ts";
import type { ReadingsFigure } from "./study-figure.ts";

const ROOMY = 16;
const TIGHT = 5;
/** From this many subjects on, rows are drawn close and without names. */
const MANY = 120;

/** Readings as marks, a row for each subject and a shape for each measurer. */
export function drawReadings({ text, measurers, rows }: ReadingsFigure, id: string): string {
  const row = rows.length >= MANY ? TIGHT : ROOMY;
  const legend = measurers.length > 1 ? 24 * Math.ceil(measurers.length / 5) : 0;
  const top = 48 + legend;
  const foot = top + rows.length * row + 8;
  const scale = plotScale(
    rows.flatMap(({ readings }) => readings.map(({ mm }) => mm)),
    text.unit,
    [PAGE.left, PAGE.right],
    12,
  );
  return picture(text, id, foot + 48, [
    ...(measurers.length > 1
      ? measurers.flatMap((name, k) => {
          const [x, y] = [30 + (k % 5) * 135, 52 + Math.floor(k / 5) * 24];
          return [mark(x, y, k), label(x + 12, y + 4, shorten(name, 16))];
        })
      : []),
    ...scale.marks.map(({ mm }) => line(scale.at(mm), top, scale.at(mm), foot, { "stroke-opacity": 0.2 })),
    ...rows.flatMap(({ subject, readings }, k) => {
      const y = top + (k + 0.5) * row;
      return [
        ...(row === ROOMY
          ? [label(PAGE.left - 10, y + 4, shorten(subject, 13), { "text-anchor": "end", "font-size": 12 })]
          : []),
        ...readings.map(({ measurer, mm }) => mark(scale.at(mm), y, measurer)),
      ];
    }),
    line(PAGE.left, foot, PAGE.right, foot),
    ...scale.marks.flatMap(({ mm, text: words }) => [
      label(scale.at(mm), foot + 18, words, { "text-anchor": "middle" }),
    ]),
    label((PAGE.left + PAGE.right) / 2, foot + 38, `Reading (${text.unit})`, { "text-anchor": "middle" }),
  ]);
}

/** Shapes that are told apart without colour; after five of them the same ones filled. */
function mark(x: number, y: number, measurer: number): string {
  const shape = {
    fill: "currentColor",
    "fill-opacity": Math.floor(measurer / 5) % 2 === 0 ? 0.15 : 0.9,
    stroke: "currentColor",
    "stroke-width": 1.2,
  };
  switch (measurer % 5) {
    case 0:
      return element("circle", { cx: x, cy: y, r: 4, ...shape });
    case 1:
      return element("rect", { x: x - 3.5, y: y - 3.5, width: 7, height: 7, ...shape });
    case 2:
      return element("path", { d: `M${at(x)} ${at(y - 4.5)}l4.5 8h-9z`, ...shape });
    case 3:
      return element("path", { d: `M${at(x)} ${at(y - 5)}l5 5l-5 5l-5-5z`, ...shape });
    default:
      return element("path", { d: `M${at(x - 4)} ${at(y - 4)}l8 8m0-8l-8 8`, ...shape });
  }
}

function at(value: number): string {
  return value.toFixed(2);
}
