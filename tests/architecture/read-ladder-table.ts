/** A row of the ladder's table as DEVELOPERS.md shows it, its last column spelt out as packages. */
export interface TableRow {
  readonly level: number;
  readonly package: string;
  readonly subject: string;
  readonly mayImport: readonly string[];
}

type Cells = readonly [level: string, name: string, subject: string, mayImport: string];

/**
 * Reads the table with the columns level, package, subject, may import.
 *
 * The last column lists clauses, split by commas: `–`, `all below`, `level 0–2`, a package's name, or
 * "never" and a package's name. Anything else throws, so that no clause goes unread.
 */
export function readLadderTable(markdown: string): readonly TableRow[] {
  const lines = markdown.split("\n").map((line) => line.trim());
  const header = lines.findIndex((line) =>
    /^\|\s*level\s*\|\s*package\s*\|\s*subject\s*\|\s*may import\s*\|$/i.test(line),
  );
  if (header < 0) throw new Error("no table with the columns level, package, subject, may import");
  const rows: Cells[] = [];
  for (const line of lines.slice(header + 2)) {
    if (!line.startsWith("|")) break;
    const [, level, name, subject, mayImport, end] = line.split("|").map((cell) => cell.trim());
    if (
      level === undefined ||
      name === undefined ||
      subject === undefined ||
      mayImport === undefined ||
      end !== ""
    ) {
      throw new Error(`not a row of four columns: ${line}`);
    }
    rows.push([level, name.replaceAll("`", ""), subject, mayImport]);
  }
  const levels = new Map(rows.map(([level, name]) => [name, Number(level)]));
  return rows.map(([level, name, subject, mayImport]) => ({
    level: Number(level),
    package: name,
    subject,
    mayImport: spellOut(mayImport, Number(level), levels),
  }));
}

function spellOut(column: string, level: number, levels: ReadonlyMap<string, number>): readonly string[] {
  const allowed = new Set<string>();
  const between = (from: number, to: number): void => {
    for (const [name, at] of levels) if (at >= from && at <= to) allowed.add(name);
  };
  for (const clause of column.split(",").map((part) => part.trim())) {
    const span = /^level (\d+)(?:[–-](\d+))?$/.exec(clause);
    const name = /^(never )?`([a-z]+)`$/.exec(clause);
    if (clause === "–") continue;
    else if (clause === "all below") between(0, level - 1);
    else if (span !== null) between(Number(span[1]), Number(span[2] ?? span[1]));
    else if (name?.[2] !== undefined && levels.has(name[2])) {
      if (name[1] === undefined) allowed.add(name[2]);
      else allowed.delete(name[2]);
    } else throw new Error(`cannot read "${clause}" in the ladder's table`);
  }
  return [...allowed].sort();
}
