import type { StudyFigureText } from "./study-figure.ts";
import { element, label, words } from "./svg.ts";

/** How wide every picture is, and its margins. */
export const PAGE: { readonly width: number; readonly left: number; readonly right: number } = {
  width: 720,
  left: 110,
  right: 700,
};

const CHARACTERS = 104;
const LINE = 16;

/**
 * A whole picture: title and description for screen readers, the drawing, and below it sample and caveat.
 * Everything is drawn in the colour of the text around it (`currentColor`), so that it reads on light and dark.
 */
export function picture(
  text: StudyFigureText,
  id: string,
  height: number,
  drawing: readonly string[],
): string {
  const notes = [`Sample: ${text.sample}.`, `Caveat: ${text.caveat}`].flatMap((note) =>
    broken(note, CHARACTERS),
  );
  const whole = height + notes.length * LINE + 12;
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${PAGE.width} ${whole}`,
      width: PAGE.width,
      height: whole,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      "font-family": "system-ui, sans-serif",
    },
    element("title", { id: `${id}-title` }, words(text.title)),
    element("desc", { id: `${id}-desc` }, words(text.description)),
    label(20, 28, cut(text.title, 70), { "font-size": 17, "font-weight": 600 }),
    ...drawing,
    ...notes.map((note, k) =>
      label(20, height + 12 + k * LINE, note, { "font-size": 12, "fill-opacity": 0.8 }),
    ),
  );
}

/** Text that has room for so many characters. */
export function cut(text: string, characters: number): string {
  const all = [...text];
  return all.length <= characters ? text : `${all.slice(0, characters - 1).join("")}…`;
}

function broken(text: string, characters: number): readonly string[] {
  const out: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = out.at(-1);
    if (last === undefined || last.length + 1 + word.length > characters) out.push(word);
    else out[out.length - 1] = `${last} ${word}`;
  }
  return out.map((each) => cut(each, characters + 10));
}
