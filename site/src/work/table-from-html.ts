/** Cells beyond these are no size chart. */
const MOST_ROWS = 20_000;

/**
 * The first table of a piece of HTML, as text parted by tabs; `undefined` where there is none. The HTML is
 * parsed as a document of its own in which nothing runs and nothing loads, and only its text is used.
 */
export function tableFromHtml(html: string): string | undefined {
  const page = new DOMParser().parseFromString(html, "text/html");
  const rows = [...(page.querySelector("table")?.rows ?? [])].slice(0, MOST_ROWS);
  if (rows.length === 0) return undefined;
  const lines = rows.map((row) =>
    [...row.cells].flatMap((cell) => {
      const text = (cell.textContent ?? "").replace(/\s+/g, " ").trim();
      return [text, ...Array.from({ length: Math.min(cell.colSpan, 50) - 1 }, () => "")];
    }),
  );
  return lines.map((cells) => cells.join("\t")).join("\n");
}
