import { type LengthUnit, safeParseLengthUnit } from "@tapewise/units";

/** A header without its unit. */
export interface SplitHeader {
  readonly label: string;
  readonly unit?: LengthUnit;
}

const BRACKET = /^(.*?)\s*[([]\s*([^()[\]]*?)\s*[)\]]$/;
const COMMA = /^(.*?)\s*,\s*([^,]*)$/;
const LAST_WORD = /^(.*?\S)[\s_]+([^\s_]+)$/;

/**
 * Parts a header into its label and its unit: in brackets, after a comma or as the last word. A lone `m` at the
 * end may be a name's initial, so that the metre stands in brackets or after a comma only.
 */
export function splitHeader(text: string): SplitHeader {
  const header = text.trim().replace(/\s+/g, " ");
  for (const pattern of [BRACKET, COMMA, LAST_WORD]) {
    const [, label = "", word = ""] = pattern.exec(header) ?? [];
    if (word === "" || (pattern === LAST_WORD && /^m$/i.test(word))) continue;
    const unit = safeParseLengthUnit(word);
    if (unit.ok) return { label, unit: unit.value };
  }
  return { label: header };
}

/** Words as they are compared: lower case, one space between them. */
export function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s_.-]+/g, " ")
    .trim();
}
