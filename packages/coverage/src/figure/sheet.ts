import { drawSheet, label, line } from "@tapewise/figures";
import type { FigureText } from "./figure-text.ts";

/** How wide every picture is, and its margins. */
export const SHEET: {
  readonly width: number;
  readonly left: number;
  readonly right: number;
} = { width: 720, left: 56, right: 700 };

/** A whole picture: the drawing, and below it sample, source and caveat. */
export function drawPlot(text: FigureText, id: string, height: number, drawing: readonly string[]): string {
  const { title, description, sample, source, caveat } = text;
  const notes = [`Sample: ${sample}.`, `Source: ${source}.`, `Caveat: ${caveat}`];
  return drawSheet({ title, description, notes, id, width: SHEET.width, height }, drawing);
}

/** The axis line with its marks and their labels. */
export function drawAxis(
  y: number,
  marks: readonly { readonly x: number; readonly text: string }[],
  caption: string,
): readonly string[] {
  return [
    line(SHEET.left, y, SHEET.right, y),
    ...marks.flatMap(({ x, text }) => [
      line(x, y, x, y + 5),
      label(x, y + 19, text, { "text-anchor": "middle" }),
    ]),
    label((SHEET.left + SHEET.right) / 2, y + 38, caption, { "text-anchor": "middle" }),
  ];
}
