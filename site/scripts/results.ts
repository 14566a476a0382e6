/** A table of a markdown page: the cells of its heading and of each row, without the rule between them. */
export interface Table {
  readonly heading: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/**
 * The first table under a heading of a markdown page, where the heading lies below `section`.
 *
 * @throws Error when there is no such heading or no table under it, so that a changed page is noticed.
 */
export function tableUnder(page: string, section: string, title: string): Table {
  const lines = page.split("\n");
  const begin = lines.indexOf(`## ${section}`);
  const at = lines.findIndex((line, index) => index > begin && line.startsWith(`### ${title}`));
  const next = lines.findIndex((line, index) => index > begin && line.startsWith("## "));
  if (begin < 0 || at < 0 || (next >= 0 && at > next)) throw new Error(`no “${title}” under “${section}”`);
  const first = lines.findIndex((line, index) => index > at && line.startsWith("|"));
  const end = lines.findIndex((line, index) => index > first && !line.startsWith("|"));
  const [heading, , ...rows] = lines.slice(first, end).map(cellsOf);
  if (heading === undefined || rows.length === 0) throw new Error(`no table under “${title}”`);
  return { heading, rows };
}

/** The number at the beginning of a cell such as `6.24 ± 0.11`. */
export function leadingNumber(cell: string | undefined): number {
  const value = Number.parseFloat(cell ?? "");
  if (!Number.isFinite(value)) throw new Error(`“${cell ?? ""}” begins with no number`);
  return value;
}

function cellsOf(line: string): readonly string[] {
  return line
    .replace(/^\|/, "")
    .replace(/\|$/, "")
    .split("|")
    .map((cell) => cell.trim());
}
