// Beside what markup reserves, the control characters that it has no way to write.
const UNWRITABLE = /(?![\t\n\r])[\p{Cc}\u{FFFE}\u{FFFF}]/gu;

/**
 * Text for an element or an attribute: nothing in it is taken for markup, and what SVG cannot hold becomes U+FFFD.
 *
 * @example
 * ```ts
 * import { words } from "@tapewise/figures";
 * words("S & M < L"); // => "S &amp; M &lt; L"
 * ```
 */
export function words(text: string): string {
  return text
    .toWellFormed()
    .replace(UNWRITABLE, "\u{FFFD}")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
