import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { root } from "../architecture/workspace.ts";
import { findBlocks, listPages } from "./examples.ts";
import { figuresOf, listPassages, missingNumbers, numbersOf, type Passage, readMark } from "./site-claims.ts";
import { docs, issuesFile } from "./site-pages.ts";

// What a page says in figures either is in a file of the project, or in an example of the same page that is run, or
// is worked out in the sentence itself. A mark before the passage says which: `from: FILE`, `from: FILE, rounded`,
// `from: this page` or `arithmetic: …`.
const pages = listPages()
  .filter((file) => file.startsWith(`${docs}/`) && file !== issuesFile)
  .map((file) => ({ file, text: readFileSync(join(root, file), "utf8") }));

function complaints(file: string, page: string, passage: Passage): readonly string[] {
  const at = `${file}:${passage.line}`;
  const origin = readMark(passage.mark);
  const figures = figuresOf(passage.text);
  if (origin === undefined) {
    return figures.length === 0 ? [] : [`${at}: no mark says where ${figures.join(", ")} come from`];
  }
  if (origin.kind === "arithmetic") return [];
  if (origin.kind === "this page") {
    const examples = findBlocks(file, page, 1)
      .map(({ code }) => code)
      .join("\n");
    return missingNumbers(figures, examples, origin.rounded).map(
      (each) => `${at}: ${each} is in no example here`,
    );
  }
  const path = join(root, origin.file ?? "");
  if (!existsSync(path)) return [`${at}: there is no file ${origin.file}`];
  const text = readFileSync(path, "utf8");
  return missingNumbers(numbersOf(passage.text), text, origin.rounded).map(
    (each) => `${at}: ${each} is not in ${origin.file}`,
  );
}

test("every figure of a page has an origin, and is there", () => {
  const passages = pages.flatMap(({ file, text }) =>
    listPassages(text).map((passage) => ({ file, text, passage })),
  );
  expect(passages.filter(({ passage }) => readMark(passage.mark)?.kind === "file").length).toBeGreaterThan(8);
  expect(passages.flatMap(({ file, text, passage }) => complaints(file, text, passage))).toEqual([]);
});

describe("the check is not blind", () => {
  const policy = "packages/fit/src/policy.ts";
  const check = (page: string): readonly string[] =>
    listPassages(page).flatMap((passage) => complaints("x.md", page, passage));

  test("a share without a mark is seen, in a paragraph, a list and a table", () => {
    expect(check("---\ntitle: 5 %\n---\n\nIt fits 12 %\nof them.\n")).toEqual([
      "x.md:5: no mark says where 12 come from",
    ]);
    expect(check("- off by 1.64 points\n")).toEqual(["x.md:1: no mark says where 1.64 come from"]);
    expect(check("| a |\n| --- |\n| 9.39 |\n")).toEqual(["x.md:1: no mark says where 9.39 come from"]);
    expect(check("Read it 3 times; take `1.5` or see [2 %](../a-1.5/).\n")).toEqual([
      "x.md:1: no mark says where 2 come from",
    ]);
  });

  test("a figure that is not in its file is seen", () => {
    expect(check(`<!-- from: ${policy} -->\n\nFrom 0.9 on it is sure, from 0.7 on it fits.\n`)).toEqual([
      `x.md:3: 0.7 is not in ${policy}`,
    ]);
    expect(check("<!-- from: nowhere.md -->\n\nIt is 0.9.\n")).toEqual([
      "x.md:3: there is no file nowhere.md",
    ]);
  });

  test("a rounded figure is a figure of the file to fewer digits", () => {
    expect(missingNumbers(["22.7", "400.0", "22.8"], "sdMm: [64.1435, 22.7065], 400.0101", true)).toEqual([
      "22.8",
    ]);
    expect(missingNumbers(["22.7"], "22.7065", false)).toEqual(["22.7"]);
    expect(missingNumbers(["2,040", "2040"], "2_040 people", false)).toEqual([]);
  });

  test("an example of the page vouches for what is said of it, and only that", () => {
    const page = "```console\n$ a\n97 %\n```\n\n<!-- from: this page -->\n\nThe chance is 97 %, not 96 %.\n";
    expect(check(page)).toEqual(["x.md:8: 96 is in no example here"]);
  });

  test("a mark holds for the next passage only", () => {
    expect(check("<!-- arithmetic: here -->\n\n2 × 1.5 = 3\n\nIt is 1.5.\n")).toEqual([
      "x.md:5: no mark says where 1.5 come from",
    ]);
  });
});
