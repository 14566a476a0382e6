import type { Received } from "./issue.ts";
import { printable, quoted } from "./printable.ts";

const LONGEST = 80;

/**
 * Turns any value into what an issue may show of it: a primitive that survives JSON, at most 80
 * characters long.
 *
 * Text keeps its beginning and says how long it was; control characters, line separators and
 * direction marks become `�`; objects are named by kind; `NaN`, infinities and big integers become
 * text; minus zero becomes zero. Never throws.
 *
 * @example
 * ```ts
 * import { describeReceived } from "@tapewise/outcome";
 * describeReceived("19"); // => "19"
 * describeReceived(Number.NaN); // => "NaN"
 * describeReceived([1, 2, 3]); // => "a list of 3"
 * ```
 */
export function describeReceived(value: unknown): Received {
  switch (typeof value) {
    case "string":
      return shorten(value);
    case "number":
      // JSON has no minus zero.
      return Number.isFinite(value) ? value + 0 : String(value);
    case "boolean":
      return value;
    case "undefined":
      return "nothing";
    case "bigint":
      return shorten(String(value));
    case "function":
      return "a function";
    case "symbol":
      return "a symbol";
    default:
      if (value === null) return null;
      return describeObject(value);
  }
}

/**
 * What a sentence shows of a received value: the value as text, but in quotes where a reader would
 * see nothing (an empty text, spaces only).
 */
export function receivedText(received: Received): string {
  const text = String(received);
  return text.trim() === "" ? quoted(text) : text;
}

function shorten(text: string): string {
  if (text.length <= LONGEST) return printable(text);
  return `${printable(text.slice(0, LONGEST - 24)).trimEnd()}… (${text.length} characters)`;
}

function describeObject(value: unknown): string {
  try {
    if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  } catch {
    // A proxy may refuse every question; reporting an issue must not fail because of it.
  }
  return "an object";
}
