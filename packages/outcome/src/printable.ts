// Control characters and line separators break a one-line message, escape sequences can repaint a
// terminal, direction marks can make a text read as something else, and lone surrogates break JSON elsewhere.
const DISRUPTIVE = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu;

/**
 * Text that stays on one line and reads as it is stored: what would disturb becomes U+FFFD.
 *
 * @example
 * ```ts
 * import { printable } from "@tapewise/outcome";
 * printable("one\ntwo"); // => "one\uFFFDtwo"
 * ```
 */
export function printable(text: string): string {
  return text.toWellFormed().replace(DISRUPTIVE, "\uFFFD");
}

/**
 * JSON on one line with what would disturb written as an escape: the value is the same.
 *
 * @example
 * ```ts
 * import { escaped } from "@tapewise/outcome";
 * JSON.parse(escaped(JSON.stringify("one\u2028two"))); // => "one\u2028two"
 * ```
 */
export function escaped(json: string): string {
  return json.replace(
    DISRUPTIVE,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

/** Text in quotes, with what would disturb written as an escape, so that nothing is lost. */
export function quoted(text: string): string {
  return escaped(JSON.stringify(text));
}
