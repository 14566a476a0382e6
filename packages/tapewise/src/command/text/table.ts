import { displayWidth, padEnd, padStart } from "./display-width.ts";

/** How a column is set; numbers read best with their ends in line. */
export type Alignment = "left" | "right";

/** Rows as aligned lines, with a rule under the header. Columns are two spaces apart; no line ends in spaces. */
export function table(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  alignments: readonly Alignment[] = [],
  margin = "  ",
): string[] {
  const widths = header.map((title, column) =>
    Math.max(displayWidth(title), ...rows.map((row) => displayWidth(row[column] ?? ""))),
  );
  const line = (cells: readonly string[]): string => {
    const padded = widths.map((width, column) =>
      (alignments[column] === "right" ? padStart : padEnd)(cells[column] ?? "", width),
    );
    return (margin + padded.join("  ")).trimEnd();
  };
  return [line(header), line(widths.map((width) => "-".repeat(width))), ...rows.map(line)];
}
