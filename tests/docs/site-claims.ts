/** A paragraph, list or table of a page, with the mark that says where its figures come from. */
export interface Passage {
  /** The line, from 1, of its first line. */
  readonly line: number;
  readonly text: string;
  /** What stands in the `<!-- … -->` before it. */
  readonly mark?: string;
}

/** Where a passage says that its figures come from. */
export interface Origin {
  /** A file of the project, or `undefined` for the page's own examples and for arithmetic. */
  readonly file?: string;
  readonly kind: "file" | "this page" | "arithmetic";
  /** Whether the page shows the file's figures with fewer digits. */
  readonly rounded: boolean;
}

/**
 * The passages of a page that are prose: without front matter, code, markup of figures and headings. A comment
 * alone in its passage is the mark of the next one.
 */
export function listPassages(page: string): readonly Passage[] {
  const lines = page.split("\n");
  const passages: Passage[] = [];
  let mark: string | undefined;
  let begin = 0;
  const blank = withoutCode(lines);
  for (const [index, line] of [...blank, ""].entries()) {
    if (line.trim() !== "") continue;
    const text = blank.slice(begin, index).join("\n");
    const at = begin + 1;
    begin = index + 1;
    if (text.trim() === "") continue;
    const comment = /^<!-- ([\s\S]*) -->$/.exec(text.trim());
    if (comment !== null) mark = comment[1];
    else if (!/^(?:#|<figure>|<!-- )/.test(text)) {
      passages.push({ line: at, text, ...(mark === undefined ? {} : { mark }) });
      mark = undefined;
    }
  }
  return passages;
}

/** The figures of a passage that need an origin: shares, points and numbers with decimals. */
export function figuresOf(text: string): readonly string[] {
  const plain = text.replace(/`[^`\n]*`/g, " ").replace(/\]\([^)]*\)/g, "] ");
  const shares = /(?<![\w.,])\d+(?:[.,]\d+)*(?= ?%| points?\b)/g;
  const decimals = /(?<![\w.,])\d+\.\d+(?![\w.]*\w)/g;
  return [...new Set([...plain.matchAll(shares), ...plain.matchAll(decimals)].map(([figure]) => figure))];
}

/** All numbers of a passage, as they are written. */
export function numbersOf(text: string): readonly string[] {
  return [
    ...new Set([...text.matchAll(/(?<![\w.])\d+(?:,\d{3})*(?:\.\d+)?(?!\w)/g)].map(([number]) => number)),
  ];
}

/** Reads the mark of a passage; `undefined` when it says nothing about figures. */
export function readMark(mark: string | undefined): Origin | undefined {
  const [, kind, rest = ""] = /^(from|arithmetic): ([\s\S]+)$/.exec(mark ?? "") ?? [];
  if (kind === "arithmetic") return { kind: "arithmetic", rounded: false };
  if (kind !== "from") return undefined;
  const rounded = rest.endsWith(", rounded");
  const file = rest.replace(/, rounded$/, "");
  return file === "this page" ? { kind: file, rounded } : { kind: "file", file, rounded };
}

/** The numbers of a passage that a text does not have: as written, or to as many digits as the passage shows. */
export function missingNumbers(
  numbers: readonly string[],
  text: string,
  rounded: boolean,
): readonly string[] {
  const there = [...text.matchAll(/\d+(?:[ ,_]\d{3})*(?:\.\d+)?/g)].map(([number]) => amountOf(number));
  return numbers.filter((number) => {
    const value = amountOf(number);
    const digits = number.split(".")[1]?.length ?? 0;
    return !there.some(
      (each) => each === value || (rounded && each.toFixed(digits) === value.toFixed(digits)),
    );
  });
}

function amountOf(number: string): number {
  return Number(number.replace(/[ ,_]/g, ""));
}

/** The lines with blank ones in place of front matter and code, so that numbers of lines stay. */
function withoutCode(lines: readonly string[]): readonly string[] {
  let fence: string | undefined = lines[0] === "---" ? "---" : undefined;
  return lines.map((line, index) => {
    if (fence !== undefined) {
      if (line.trim() === fence && index > 0) fence = undefined;
      return "";
    }
    const [, opened] = /^\s*(`{3,})/.exec(line) ?? [];
    if (opened === undefined) return line;
    fence = opened;
    return "";
  });
}
