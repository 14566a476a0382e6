import { readFileSync } from "node:fs";
import { join } from "node:path";
import { sources } from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";
import { readWorkspace, root } from "../architecture/workspace.ts";
import { docs } from "./site-pages.ts";

const page = readFileSync(join(root, `${docs}/reference/sources.md`), "utf8");

/** Names and years as authors are cited, and the numbers of standards and reports. */
function citationsIn(text: string): readonly string[] {
  const plain = text.replace(/\n\s*(?:\*|\/\/)? */g, " ");
  const authors = [
    ...plain.matchAll(/\b(\p{Lu}[\p{L}'-]+)(?: et al\.)?,? \(?((?:18|19|20)\d{2})\b(?! ?[×*/=])/gu),
  ]
    .filter(([, name = ""]) => !NO_AUTHORS.has(name))
    .map(([, name, year]) => `${name} ${year}`);
  const numbers = [
    ...plain.matchAll(/\b(?:ISO \d+(?:-\d+)?|JCGM \d+|NIST SP \d+|RFC \d+|NATICK\/TR-\d+\/\d+)/g),
  ].map(([whole]) => whole);
  return [...new Set([...authors, ...numbers])];
}

// Words that stand before a year and are no author.
const NO_AUTHORS: ReadonlySet<string> = new Set(
  "Surveys Soldiers II Statist Simul Guidance Review".split(" "),
);

/** Whether a line of the page names the author and the year, or the number. */
function isNamed(citation: string, text: string): boolean {
  const [, name, year] = /^(\p{L}[\p{L}'-]+) (\d{4})$/u.exec(citation) ?? [];
  if (name === undefined || year === undefined || citation.startsWith("RFC")) return text.includes(citation);
  return text.split("\n").some((line) => line.includes(name) && line.includes(year));
}

const cited = readWorkspace()
  .filter(({ folder }) => folder !== "site")
  .flatMap(({ folder, files }) =>
    files
      .filter(({ path }) => path.startsWith("src/"))
      .flatMap(({ path, text }) =>
        citationsIn(text).map((citation) => ({ citation, at: `${folder}/${path}` })),
      ),
  );

test("the page of sources names every source that the code cites", () => {
  expect(cited.length).toBeGreaterThan(50);
  const missing = cited.filter(({ citation }) => !isNamed(citation, page));
  expect(
    missing.map(({ citation, at }) => `${citation} (${at})`),
    "name these on the page, with what they are used for",
  ).toEqual([]);
});

test("the page names every publication behind the landmarks, and how far it was read", () => {
  expect(sources.length).toBeGreaterThan(5);
  expect(sources.filter(({ title }) => !page.includes(title)).map(({ title }) => title)).toEqual([]);
});

describe("the check is not blind", () => {
  test("authors with their year, standards and reports are found, across lines", () => {
    const text = "/** After Miller (1901) and ISO 12345-1.\n * See Smith\n * 1999, NATICK/TR-99/001. */";
    expect(citationsIn(text)).toEqual(["Miller 1901", "Smith 1999", "ISO 12345-1", "NATICK/TR-99/001"]);
  });

  test("a source that is not on the page is missed", () => {
    expect(isNamed("Miller 1901", page)).toBe(false);
    expect(isNamed("Gordon 1902", page)).toBe(false);
    expect(isNamed("Gordon 2014", page)).toBe(true);
    expect(isNamed("ISO 12345-1", page)).toBe(false);
  });
});
