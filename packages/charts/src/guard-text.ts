import { failure, type Outcome, success } from "@tapewise/outcome";
import { placeOf } from "@tapewise/tables";
import { chartIssue } from "./chart-issue.ts";
import { LONGEST_TEXT } from "./data.ts";

/** How many control characters or undecodable bytes show that a text is none. */
const STRANGE_SHARE = 0.1;

/**
 * A text that is fit to be parsed: not empty, not endless, not a picture. A byte order mark is taken off.
 * Its cost does not grow with a text that is too long.
 */
export function guardText(text: unknown, file: string | undefined): Outcome<string> {
  const place = placeOf(1, 1, file);
  if (typeof text !== "string") {
    return failure([chartIssue("chart-not-text", { received: text, place })]);
  }
  if (text.length > LONGEST_TEXT) {
    const facts = { characters: text.length, limit: LONGEST_TEXT };
    return failure([chartIssue("chart-too-large", { received: text.slice(0, 200), facts, place })]);
  }
  const plain = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (plain.trim() === "")
    return failure([chartIssue("chart-empty", { received: text.slice(0, 200), place })]);
  if (isBinary(plain))
    return failure([chartIssue("chart-not-text", { received: plain.slice(0, 200), place })]);
  return success(plain);
}

function isBinary(text: string): boolean {
  if (text.includes("\0")) return true;
  let strange = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    const isControl = code < 32 && code !== 9 && code !== 10 && code !== 13;
    if (isControl || code === 0xfffd) strange++;
  }
  return strange > text.length * STRANGE_SHARE;
}
