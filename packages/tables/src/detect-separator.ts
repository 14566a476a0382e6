import type { DelimitedTextOptions, Separator } from "./table-rows.ts";

const CANDIDATES: readonly Separator[] = ["\t", ";", ","];

/**
 * The character that parts the cells: the first of tab, semicolon and comma that the header holds
 * outside quotation marks, and the line after it too where there is one. Text copied from a page has
 * tabs, and commas may then stand in its cells; a semicolon file has decimal commas.
 *
 * @example
 * ```ts
 * import { detectSeparator } from "@tapewise/tables";
 * detectSeparator("size;torso, back\nS;38,5"); // => ";"
 * ```
 */
export function detectSeparator(text: string, options: DelimitedTextOptions = {}): Separator {
  const [header = "", next] = firstLines(text, options.remarks ?? true);
  const held = CANDIDATES.filter((candidate) => header.includes(candidate));
  return held.find((candidate) => next === undefined || next.includes(candidate)) ?? held[0] ?? ",";
}

/** The header and the line after it without what stands in quotation marks; remarks and blank lines do not count. */
function firstLines(text: string, remarks: boolean): readonly string[] {
  const lines: string[] = [];
  // A quoted cell of a header may go over several lines, so quotations are taken out first.
  const start = text.slice(text.startsWith("\uFEFF") ? 1 : 0, 20_000).replace(/"[^"]*"/g, '""');
  for (const line of start.split(/\r\n|\n|\r/)) {
    if ((remarks && line.startsWith("#")) || line.replace(/[\s,;]/g, "") === "") continue;
    if (lines.push(line) === 2) break;
  }
  return lines;
}
