// Unicode Standard Annex #11: the blocks whose characters take two cells. Coarse, and enough to keep columns straight.
const WIDE =
  /[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6\u{1F300}-\u{1FAFF}\u{20000}-\u{3FFFD}]/u;
const WITHOUT_WIDTH = /[\p{Mn}\p{Me}\p{Cf}]/u;

/** How many cells of a terminal a text takes. */
export function displayWidth(text: string): number {
  let width = 0;
  for (const character of text) {
    if (WITHOUT_WIDTH.test(character)) continue;
    width += WIDE.test(character) ? 2 : 1;
  }
  return width;
}

/** The text, filled up with spaces to a width; a longer text is left whole. */
export function padEnd(text: string, width: number): string {
  return text + " ".repeat(Math.max(0, width - displayWidth(text)));
}

/** The text, filled up with spaces in front. */
export function padStart(text: string, width: number): string {
  return " ".repeat(Math.max(0, width - displayWidth(text))) + text;
}

/** At most `width` cells of a text; what is cut off is shown as `..`. */
export function shorten(text: string, width: number): string {
  if (displayWidth(text) <= width) return text;
  let kept = "";
  for (const character of text) {
    if (displayWidth(kept + character) > width - 2) break;
    kept += character;
  }
  return `${kept}..`;
}
