import type { FigureText } from "./figure-text.ts";
import { element, label, lines, words } from "./svg.ts";

/** How wide every picture is, and its margins. */
export const SHEET: {
  readonly width: number;
  readonly left: number;
  readonly right: number;
} = { width: 720, left: 56, right: 700 };

const CHARACTERS = 108;
const LINE = 16;

/**
 * A whole picture: title and description for screen readers, the drawing, and below it sample, source and caveat.
 * Everything is drawn in the colour of the text around it (`currentColor`), so that it reads on light and dark.
 */
export function drawSheet(text: FigureText, id: string, height: number, drawing: readonly string[]): string {
  const notes = [`Sample: ${text.sample}.`, `Source: ${text.source}.`, `Caveat: ${text.caveat}`].flatMap(
    (note) => lines(note, CHARACTERS),
  );
  const whole = height + notes.length * LINE + 12;
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${SHEET.width} ${whole}`,
      width: SHEET.width,
      height: whole,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      "font-family": "system-ui, sans-serif",
    },
    element("title", { id: `${id}-title` }, words(text.title)),
    element("desc", { id: `${id}-desc` }, words(text.description)),
    // A long title is set smaller, so that it stays in the picture: bold letters are about 0.6 of their size wide.
    label(20, 28, text.title, {
      "font-size": Math.max(11, Math.min(17, (SHEET.width - 40) / (0.6 * text.title.length))),
      "font-weight": 600,
    }),
    ...drawing,
    ...notes.map((note, k) =>
      label(20, height + 12 + k * LINE, note, { "font-size": 12, "fill-opacity": 0.8 }),
    ),
  );
}

/** The axis line with its marks and their labels. */
export function drawAxis(
  y: number,
  marks: readonly { readonly x: number; readonly text: string }[],
  caption: string,
): readonly string[] {
  return [
    element("line", { x1: SHEET.left, x2: SHEET.right, y1: y, y2: y, stroke: "currentColor" }),
    ...marks.flatMap(({ x, text }) => [
      element("line", { x1: x, x2: x, y1: y, y2: y + 5, stroke: "currentColor" }),
      label(x, y + 19, text, { "text-anchor": "middle" }),
    ]),
    label((SHEET.left + SHEET.right) / 2, y + 38, caption, { "text-anchor": "middle" }),
  ];
}
