import type { Received } from "./issue.ts";

const LONGEST = 80;

/**
 * Turns any value into what an issue may show of it: a primitive that survives JSON, at most 80
 * characters long.
 *
 * Text keeps its beginning and says how long it was; control characters become `�`; objects
 * are named by kind; `NaN`, infinities and big integers become text. Never throws.
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
      return Number.isFinite(value) ? value : String(value);
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
      return Array.isArray(value) ? `a list of ${value.length}` : "an object";
  }
}

function shorten(text: string): string {
  if (text.length <= LONGEST) return printable(text);
  return `${printable(text.slice(0, LONGEST - 24)).trimEnd()}… (${text.length} characters)`;
}

function printable(text: string): string {
  // Control characters would break one-line messages; lone surrogates would break JSON elsewhere.
  return text.toWellFormed().replace(/\p{Cc}/gu, "\uFFFD");
}
