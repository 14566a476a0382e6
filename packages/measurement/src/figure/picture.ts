import { drawSheet, shorten } from "@tapewise/figures";
import type { StudyFigureText } from "./study-figure.ts";

/** How wide every picture is, and its margins. */
export const PAGE: { readonly width: number; readonly left: number; readonly right: number } = {
  width: 720,
  left: 110,
  right: 700,
};

/** A whole picture: the drawing, and below it sample and caveat. */
export function picture(
  text: StudyFigureText,
  id: string,
  height: number,
  drawing: readonly string[],
): string {
  const { description, sample, caveat } = text;
  const notes = [`Sample: ${sample}.`, `Caveat: ${caveat}`];
  const sheet = { title: shorten(text.title, 70), description, notes, id, width: PAGE.width, height };
  return drawSheet(sheet, drawing);
}
