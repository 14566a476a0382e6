// Control characters and line separators break a one-line message, direction marks can make it read
// as something else, and lone surrogates break JSON elsewhere.
const DISRUPTIVE = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu;

/** Text that stays on one line and reads as it is stored: what would disturb becomes U+FFFD. */
export function printable(text: string): string {
  return text.toWellFormed().replace(DISRUPTIVE, "\uFFFD");
}

/** Text in quotes, with what would disturb written as an escape, so that nothing is lost. */
export function quoted(text: string): string {
  return JSON.stringify(text).replace(
    DISRUPTIVE,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
