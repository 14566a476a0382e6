/** A number as an approximate literal of standard SQL, which every engine takes for a double. */
export function writeNumber(value: number): string {
  const digits = String(value).toUpperCase();
  return digits.includes("E") ? digits.replace("E+", "E") : `${digits}E0`;
}

/** A text as a literal. */
export function writeText(text: string): string {
  return `'${text.replaceAll("'", "''")}'`;
}

/** The name of a table or a column: as it stands where it is a plain one, else in quotation marks. */
export function writeName(name: string): string {
  return /^[a-z_][a-z0-9_]*$/.test(name) ? name : `"${name.replaceAll('"', '""')}"`;
}

/** A list of terms, joined by an operator, or what stands for none. */
export function joinTerms(terms: readonly string[], operator: string, none: string): string {
  return terms.length === 0 ? none : terms.join(` ${operator} `);
}

/** The parts of a query, each under its name. */
export function writeWith(parts: readonly (readonly [name: string, query: string])[]): string {
  return `WITH ${parts.map(([name, query]) => `${name} AS (\n${indent(query)}\n)`).join(",\n")}`;
}

function indent(text: string): string {
  return text
    .split("\n")
    .map((line) => `  ${line}`)
    .join("\n");
}
