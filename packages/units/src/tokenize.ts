import type { Problem } from "./problem.ts";

/** Longer than any length that people write out, `1 foot 6 3/8 inches` with spaces included. */
const LONGEST = 64;

/** The tokens of a text, of which there is at least one, or why there are none. */
export function readTokens(text: unknown): readonly string[] | Problem {
  if (typeof text !== "string") return { code: "length-not-text" };
  if (text.length > LONGEST) {
    return { code: "length-too-long", facts: { characters: text.length, limit: LONGEST } };
  }
  const tokens = tokenize(text);
  return tokens.length === 0 ? { code: "length-empty" } : tokens;
}

/**
 * Splits what a person wrote into numbers, words and single marks.
 *
 * A number is a run of digits with points and commas between them, or a point and digits. A word is a run
 * of letters, its abbreviation point dropped. Two apostrophes in a row are one mark. Everything else that
 * is not space is a mark of its own. Lower case, plain digits, plain quotes; see {@link plainText}.
 *
 * The work grows in proportion to the text: one character ahead settles which alternative of the pattern
 * goes on, so none goes back further than that.
 */
export function tokenize(text: string): readonly string[] {
  const tokens = plainText(text).match(/\.?\d+(?:[.,]\d+)*|[\p{L}\p{M}]+\.?|''|\S/gu) ?? [];
  return tokens.map((token) => (/^[\p{L}\p{M}]/u.test(token) ? token.replace(".", "") : token));
}

/** Whether a token is a number: only those end in a digit. */
export function isNumber(token: string | undefined): token is string {
  return token !== undefined && /[0-9]$/.test(token);
}

/** The same text in lower case and, where keyboards and word processors vary, in ASCII. */
function plainText(text: string): string {
  if (/^[ -~]*$/.test(text)) return text.toLowerCase();
  let plain = "";
  for (const character of text) plain += plainCharacter(character);
  // 18³⁄₈ is 18 3/8. A raised digit elsewhere is a footnote or a power, never a digit of the length. The whole
  // run is matched even where no slash follows, so that no search starts again inside it.
  const raised = /[⁰¹²³⁴-⁹]+(?:\/(?:[₀-₉]+|\d+))?/g;
  const spread = (run: string): string => (run.includes("/") ? ` ${run.normalize("NFKC")} ` : run);
  return plain.replace(raised, spread).toLowerCase();
}

function plainCharacter(character: string): string {
  if (character >= " " && character <= "~") return character;
  if (/[\s\p{Cf}]/u.test(character)) return " ";
  if (/[\p{Pd}\u2212]/u.test(character)) return "-";
  if (/[⁄∕]/.test(character)) return "/";
  if (/[‘’‛′ʹʼˊ´]/.test(character)) return "'";
  if (/[“”‟„″ʺ˝〃]/.test(character)) return '"';
  if (/[º˚]/.test(character)) return "°";
  const plain = character.normalize("NFKC");
  // A fraction in one character stands alone: 18⅜ is not 183/8.
  if (plain.includes("⁄")) return ` ${plain.replace("⁄", "/")} `;
  // Digits of the full width are digits; circled, raised and bracketed ones mean something else.
  return /\d/.test(plain) && !/[０-９]/.test(character) ? character : plain;
}
