/**
 * What people write between the ends of a range: any dash or tilde, an ellipsis, two or three points, or "to".
 */
const SEPARATOR =
  /\s*(?:[\p{Pd}\u2212~\u223C\u301C\uFF5E\u2053]+|…|\.{2,3})\s*|(?<!\p{L})\s*to(?!\p{L})\s*/iu;

/** A dash of any kind, as the only thing written. */
const ONLY_DASHES = /^[\p{Pd}\u2212~\u223C\u301C\uFF5E\u2053]+$/u;

const NOT_STATED = /^(?:n\s*[/.]?\s*a\.?|not stated|none|\?+)$/i;

/** `18-3/8`: a whole number, a dash without spaces, and a fraction below one. */
const HYPHENATED_FRACTION =
  /(?<![\d/.,])(\d+)[\p{Pd}\u2212](?:(\d+)\s?[/⁄∕]\s?(\d+)(?![\d.,])|([\u00BC-\u00BE\u2150-\u215E]))/gu;

const UP_TO =
  /^(?:<=?|=<|≤|⩽|≦|(?:up\s?to|under|below|less than|at most|no more than|max(?:imum)?[.:]?|to)(?!\p{L}))\s*(.+)$/iu;
const FROM_ON =
  /^(?:>=?|=>|≥|⩾|≧|(?:over|above|more than|at least|no less than|min(?:imum)?[.:]?|from)(?!\p{L}))\s*(.+)$/iu;
const AND_UP =
  /^(.*[^\s+])\s*(?:\+|(?:and|or|&)\s+(?:up(?:wards?)?|over|above|more|larger|longer|greater|bigger)|upwards?)$/i;
const AND_DOWN = /^(.*\S)\s*(?:and|or|&)\s+(?:under|below|less|smaller|shorter|down)$/i;

/** The text of a cell taken apart; the lengths in it are not read yet. */
export type CellParts =
  | { readonly kind: "range"; readonly from: string; readonly to: string }
  | { readonly kind: "from" | "to" | "nominal" | "half-range"; readonly length: string }
  | { readonly kind: "unreadable" };

/** A cell's text on one line, with plain single spaces and without space at its ends. */
export function tidyCell(text: string): string {
  return text
    .replace(/\s*[\r\n]+\s*(?=\S)/g, " | ")
    .replace(/[\s\u00AD\u200B\u2060\uFEFF]+/gu, (run) => (/\s/.test(run.replaceAll("\uFEFF", "")) ? " " : ""))
    .trim();
}

/** Whether a cell says that nothing is stated: it is empty, a dash, a question mark or "n/a". */
export function isNotStated(tidied: string): boolean {
  return tidied === "" || ONLY_DASHES.test(tidied) || NOT_STATED.test(tidied);
}

/**
 * The statements in a cell: one, or two for `38-43 cm / 15-17 in` and `38-43 cm (15-17 in)`. A slash
 * between digits belongs to a fraction.
 */
export function splitStatements(tidied: string): readonly string[] {
  const bracketed = /^([^()[\]]+)[([]([^()[\]]+)[)\]]$/.exec(tidied);
  const parts =
    bracketed === null
      ? tidied.split(/\s*\|\s*|\s+\/\s*|(?<!\d)\/\s*|\/\s+/)
      : [bracketed[1] ?? "", bracketed[2] ?? ""];
  return parts.map((part) => part.trim());
}

/**
 * Takes one statement apart.
 *
 * A hyphen right between a whole number and a fraction below one joins them: `18-3/8` is 18 3/8,
 * because as a range it would run backwards. `15-16 1/2` is a range, because its hyphen stands
 * between two whole numbers.
 */
export function splitCell(statement: string): CellParts {
  const text = statement.replace(HYPHENATED_FRACTION, joinFraction);
  const atMost = UP_TO.exec(text) ?? AND_DOWN.exec(text);
  if (atMost?.[1] !== undefined) return openEnd("to", atMost[1]);
  const range = ends(text.replace(/^(?:from|between)\s+/i, ""), /^between\s/i.test(text));
  if (range !== undefined) return range;
  const atLeast = FROM_ON.exec(text) ?? AND_UP.exec(plusAtEnd(text));
  if (atLeast?.[1] !== undefined) return openEnd("from", atLeast[1]);
  return { kind: "nominal", length: text };
}

function joinFraction(
  whole: string,
  units: string,
  numerator: string | undefined,
  denominator: string | undefined,
  vulgar: string | undefined,
): string {
  if (vulgar !== undefined) return `${units} ${vulgar}`;
  return Number(numerator) < Number(denominator) ? `${units} ${numerator}/${denominator}` : whole;
}

/** `48+ cm` is `48 cm+`. */
function plusAtEnd(text: string): string {
  return text.replace(/^([^+]*\d)\s?\+\s?(\p{L}+\.?|["'″”]+)$/u, "$1 $2+");
}

function openEnd(kind: "from" | "to", length: string): CellParts {
  if (ends(length, false) !== undefined) return { kind: "unreadable" };
  return { kind, length };
}

function ends(text: string, between: boolean): CellParts | undefined {
  const parts = text.split(between ? /\s+and\s+|\s*&\s*/i : SEPARATOR);
  if (parts.length === 1) return undefined;
  const [from = "", to = ""] = parts;
  if (parts.length > 2) return { kind: "unreadable" };
  if (from !== "" && to !== "") return { kind: "range", from, to };
  return { kind: "half-range", length: `${from}${to}` };
}
