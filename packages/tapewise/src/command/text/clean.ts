// Escape sequences can repaint a terminal, and direction marks can make a line read as something else.
const DISRUPTIVE = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu;
const DISRUPTIVE_BUT_LINE_END = /(?!\n)[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu;

/** Text of other people's making on one line: what would disturb a terminal becomes U+FFFD. */
export function cleanWord(text: string): string {
  return text.toWellFormed().replace(DISRUPTIVE, "\uFFFD");
}

/** The same for whole output, whose line ends are kept. */
export function cleanLines(text: string): string {
  return text.toWellFormed().replace(DISRUPTIVE_BUT_LINE_END, "\uFFFD");
}

/** JSON that is safe to show: the same value, with everything that could disturb a terminal escaped. */
export function cleanJson(value: unknown, indent?: number): string {
  return JSON.stringify(value, undefined, indent).replace(
    DISRUPTIVE_BUT_LINE_END,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
