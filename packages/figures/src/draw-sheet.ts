import { element } from "./element.ts";
import { label } from "./label.ts";
import { shorten } from "./shorten.ts";
import { words } from "./words.ts";

/** What a sheet says in words, and the room for its drawing. */
export interface Sheet {
  readonly title: string;
  /** What is to be seen, for people who do not see it. */
  readonly description: string;
  /** What stands below the drawing: sample, source, caveat. */
  readonly notes: readonly string[];
  /** Begins the ids of its elements, so that several pictures can stand on one page. */
  readonly id: string;
  readonly width: number;
  /** The height of the title and the drawing, without the notes. */
  readonly height: number;
}

const LINE = 16;

/**
 * A whole picture: title and description for screen readers, the drawing, and below it the notes, broken into lines.
 * Everything is drawn in the colour of the text around it (`currentColor`), so that it reads on light and dark.
 *
 * @param drawing - elements below the title, which takes the first 36 units
 *
 * @example
 * ```ts
 * import { drawSheet, line } from "@tapewise/figures";
 * const sheet = { title: "A line", description: "It runs level.", notes: [], id: "a", width: 720, height: 60 };
 * drawSheet(sheet, [line(20, 50, 700, 50)]).startsWith("<svg "); // => true
 * ```
 */
export function drawSheet(sheet: Sheet, drawing: readonly string[]): string {
  const { title, description, id, width, height } = sheet;
  // Letters 12 units high are about 6.5 wide.
  const characters = Math.floor((width - 18) / 6.5);
  const notes = sheet.notes.flatMap((note) => breakLines(note, characters));
  const whole = height + notes.length * LINE + 12;
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${whole}`,
      width,
      height: whole,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      "font-family": "system-ui, sans-serif",
    },
    element("title", { id: `${id}-title` }, words(title)),
    element("desc", { id: `${id}-desc` }, words(description)),
    // A long title is set smaller, so that it stays in the picture: bold letters are about 0.6 of their size wide.
    label(20, 28, title, {
      "font-size": Math.max(11, Math.min(17, (width - 40) / (0.6 * title.length))),
      "font-weight": 600,
    }),
    ...drawing,
    ...notes.map((note, k) =>
      label(20, height + 12 + k * LINE, note, { "font-size": 12, "fill-opacity": 0.8 }),
    ),
  );
}

/** Breaks text at its spaces into lines of at most so many characters; a word that is longer still is shortened. */
function breakLines(text: string, characters: number): readonly string[] {
  const out: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = out.at(-1);
    if (last === undefined || last.length + 1 + word.length > characters) out.push(word);
    else out[out.length - 1] = `${last} ${word}`;
  }
  return out.map((each) => shorten(each, characters));
}
