import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { exampleIds } from "../../site/scripts/examples.ts";
import { drawFigures } from "../../site/scripts/figures.ts";
import { leadingNumber, tableUnder } from "../../site/scripts/results.ts";
import { places } from "../../site/src/try-it/places.ts";
import { readWorkspace, root } from "../architecture/workspace.ts";
import { runShown } from "./console.ts";
import { listPages } from "./examples.ts";
import { issuePage, listExamples, loadIssues } from "./site-issues.ts";
import {
  currentIssuePage,
  docs,
  examplesOn,
  figuresOn,
  issuesFile,
  resultsFile,
  withBenchmarks,
  withExamples,
  withFigures,
} from "./site-pages.ts";

const WRITE = "run `npm run docs:write` and look at the difference";
const FOLDERS = ["tutorials", "how-to", "explanation", "reference"];

const pages = listPages()
  .filter((file) => ["docs", ...FOLDERS].some((folder) => file.startsWith(`${docs}/${folder}/`)))
  .map((file) => ({
    file,
    // The address of the page, from the folder of all pages.
    address: `/${file.slice(docs.length + 1).replace(/(?:\/index)?\.mdx?$/, "")}/`,
    text: readFileSync(join(root, file), "utf8"),
  }));

function textOf(path: string): string {
  return readFileSync(join(root, path), "utf8");
}

describe("what pages repeat of the code is as the code has it", () => {
  test("the page of issue codes", async () => {
    expect(textOf(issuesFile), WRITE).toBe(await currentIssuePage());
  });

  test("every code that a package declares is on it", () => {
    const page = textOf(issuesFile);
    const declared = readWorkspace().flatMap(({ files }) =>
      files
        .filter(({ path }) => /^src\/.*\.ts$/.test(path))
        .flatMap(({ text }) =>
          [...text.matchAll(/^ {2}"([a-z0-9-]+)": \{\s+severity: "/gm)].map(([, code]) => code ?? ""),
        ),
    );
    expect(declared.length).toBeGreaterThan(100);
    expect(declared.filter((code) => !page.includes(`<code id="${code}">`))).toEqual([]);
    expect(listExamples().filter((code) => !declared.includes(code))).toEqual([]);
  });

  test("the figures", () => {
    const drawn = pages.filter(({ text }) => figuresOn(text).length > 0);
    expect(drawn.flatMap(({ text }) => figuresOn(text)).sort()).toEqual(
      drawFigures(textOf(resultsFile))
        .map(({ name }) => name)
        .sort(),
    );
    for (const { file, text } of drawn) expect(text, `${file}: ${WRITE}`).toBe(withFigures(text));
  });

  test("the functions that a reader can try: each on one page, and no other than the one that runs", () => {
    expect(pages.flatMap(({ text }) => examplesOn(text)).sort()).toEqual([...exampleIds].sort());
    for (const [id, { page }] of Object.entries(places)) {
      expect(pages.filter(({ text }) => examplesOn(text).includes(id)).map(({ address }) => address)).toEqual(
        [`/${page}`],
      );
    }
    for (const { file, text } of pages) expect(withExamples(text) === text, `${file}: ${WRITE}`).toBe(true);
  });

  test("the results of the benchmarks", () => {
    const shown = pages.filter(({ text }) => text.includes("<!-- results of the benchmarks -->"));
    expect(shown).toHaveLength(1);
    for (const { file, text } of shown) expect(text, `${file}: ${WRITE}`).toBe(withBenchmarks(text));
  });

  test("the page of the command shows the help of every verb", () => {
    const page = textOf(`${docs}/reference/command.md`);
    const [, list = ""] = /Commands:\n([\s\S]*?)\n\n/.exec(runShown("tapewise --help").output) ?? [];
    const verbs = [...list.matchAll(/^ {2}([a-z]+) /gm)]
      .map(([, verb]) => verb)
      .filter((verb) => verb !== "help");
    expect(verbs.length).toBeGreaterThan(5);
    expect(verbs.filter((verb) => !page.includes(`$ npx tapewise ${verb} --help`))).toEqual([]);
  });
});

describe("pages", () => {
  test("every kind of page is there", () => {
    for (const folder of FOLDERS) {
      expect(pages.filter(({ address }) => address.startsWith(`/${folder}/`)).length).toBeGreaterThan(3);
    }
  });

  test("have a title, a description and a place in the side bar of their own", () => {
    const heads = pages.map(({ file, text }) => ({
      file,
      title: /^title: (.+)$/m.exec(text)?.[1],
      description: /^description: (.+\.)$/m.exec(text)?.[1],
      order: `${file.split("/").at(-2)} ${/^sidebar:\n {2}order: (\d+)$/m.exec(text)?.[1]}`,
    }));
    expect(
      heads.filter(({ title, description }) => title === undefined || description === undefined),
    ).toEqual([]);
    expect(new Set(heads.map(({ order }) => order)).size).toBe(heads.length);
    expect(new Set(heads.map(({ title }) => title)).size).toBe(heads.length);
  });

  test("link to each other by addresses that hold under any path", () => {
    const links = pages.flatMap(({ file, address, text }) =>
      linksOf(text).map((link) => ({ file, address, link })),
    );
    expect(links.length).toBeGreaterThan(20);
    expect(
      links.flatMap(({ file, address, link }) => faultOf(address, link).map((fault) => `${file}: ${fault}`)),
    ).toEqual([]);
  });

  test("about bodies and choices say when to ask somebody else", () => {
    const cautious = [
      "tutorials/first-size",
      "tutorials/lesson",
      "tutorials/retail-feature",
      "explanation/decision-model",
      "how-to/check-on-the-body",
    ];
    for (const name of cautious) {
      const text = textOf(`${docs}/${name}.md`);
      for (const word of ["pain", "numbness", "injury", "pregnancy", "child"]) {
        expect(text.toLowerCase(), `${name}: ${word}`).toContain(word);
      }
    }
  });
});

function linksOf(text: string): readonly string[] {
  return [...text.matchAll(/(?<!!)\[[^\]]*\]\(([^)\s]+)\)/g)].map(([, link]) => link ?? "");
}

/** What is wrong with a link of the page at an address. */
function faultOf(address: string, link: string): readonly string[] {
  if (!/^(?:#|\.\.?\/)/.test(link)) return [`${link} is not relative`];
  const target = new URL(link, `https://site.invalid${address}`);
  const id = decodeURIComponent(target.hash.slice(1));
  const own = `site/src/pages/[...lang]${target.pathname.replace(/\/$/, "")}.astro`;
  if (existsSync(join(root, own))) return [];
  const page = pages.find((each) => each.address === target.pathname);
  if (page === undefined) return [`${link} leads to no page`];
  return id === "" || idsOf(page.text).includes(id) ? [] : [`${link} leads to no heading`];
}

/** Headings as they are named in addresses, and ids that are written out. */
function idsOf(text: string): readonly string[] {
  const headings = [...text.matchAll(/^#{2,4} (.+)$/gm)].map(([, words = ""]) =>
    words
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s-]/gu, "")
      .replace(/\s/g, "-"),
  );
  return [...headings, ...[...text.matchAll(/id="([^"]+)"/g)].map(([, id]) => id ?? "")];
}

describe("the checks are not blind", () => {
  test("a link that leads nowhere is seen", () => {
    expect(faultOf("/how-to/translate/", "../../reference/issue-codes/#chart-gap")).toEqual([]);
    expect(faultOf("/how-to/translate/", "../../reference/issue-codes/#chart-hole")).toHaveLength(1);
    expect(faultOf("/how-to/translate/", "../../reference/issue-code/")).toHaveLength(1);
    expect(faultOf("/how-to/translate/", "../../chose/")).toHaveLength(1);
    expect(faultOf("/how-to/translate/", "/reference/issue-codes/")).toHaveLength(1);
    expect(faultOf("/how-to/translate/", "https://example.org/")).toHaveLength(1);
  });

  test("a new code changes the page of codes", async () => {
    const packages = await loadIssues();
    const more = [
      ...packages,
      {
        package: "x",
        issues: { "x-y": { severity: "error", message: "a | b {z}", expected: "c" } as const },
      },
    ];
    expect(issuePage(more)).toContain('| <code id="x-y">x-y</code><br>error | a \\| b {z}<br>Expected: c. |');
    expect(issuePage(more)).not.toBe(issuePage(packages));
  });

  test("a figure follows the results, and says in words what it shows", () => {
    const results = textOf(resultsFile);
    const changed = results.replace("| all | 95.32 | 9.39 ±", "| all | 95.32 | 8.25 ±");
    expect(changed).not.toBe(results);
    const [before, after] = [results, changed].map((page) =>
      drawFigures(page).find(({ name }) => name === "wrong-sizes"),
    );
    expect(before?.markup).toContain("first match 9.39 %");
    expect(after?.markup).toContain("first match 8.25 %");
    for (const { name, markup } of drawFigures(results)) {
      expect(markup).toContain(`<svg role="img" aria-labelledby="${name}-title ${name}-desc"`);
      expect(markup).toMatch(/<title id="[^"]+">[^<]{10,}<\/title>\n<desc id="[^"]+">[^<]{40,}<\/desc>/);
      expect(markup).not.toMatch(/NaN|undefined|\n\n|<script|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
    }
  });

  test("an example that says anything else than its file is written anew", () => {
    const page = "a\n\n<!-- try: read-length -->\n\n```ts\nold();\n```\n\n<!-- end of try -->\n\nb\n";
    const written = withExamples(page);
    expect(written).toContain("export function readLength(text: string) {");
    // By hand: 18 3/8 in = 18.375 × 25.4 mm = 466.725 mm.
    expect(written).toContain('readLength("18 3/8 in");\n// => { "ok": true, "value": { "mm": 466.725,');
    expect(written).not.toContain("old();");
    expect(written.startsWith("a\n\n<!-- try: read-length -->\n\n```ts\n")).toBe(true);
    expect(written.endsWith("\n```\n\n<!-- end of try -->\n\nb\n")).toBe(true);
    expect(withExamples(written)).toBe(written);
    expect(() => withExamples("<!-- try: unknown -->\n<!-- end of try -->")).toThrow(
      "no example called unknown",
    );
  });

  test("what stands between two figures stays", () => {
    const mark = (name: string): string => `<!-- figure: ${name} -->\n<!-- end of figure -->\n`;
    const page = `${mark("wrong-sizes")}\nbetween\n\n${mark("misstated")}after\n`;
    const drawn = withFigures(page);
    expect(drawn).toContain("<!-- end of figure -->\n\nbetween\n\n<!-- figure: misstated -->");
    expect(figuresOn(drawn)).toEqual(["wrong-sizes", "misstated"]);
    expect(withFigures(drawn)).toBe(drawn);
    expect(() => withFigures(mark("unknown"))).toThrow("there is no figure called unknown");
  });

  test("results without their table, or without a number, are refused", () => {
    const page = "## A\n\n### B\n\n| a | b |\n| --- | ---: |\n| x | 6.24 ± 0.11 |\n\n## C\n";
    expect(tableUnder(page, "A", "B")).toEqual({ heading: ["a", "b"], rows: [["x", "6.24 ± 0.11"]] });
    expect(() => tableUnder(page, "A", "D")).toThrow("no “D” under “A”");
    expect(() => tableUnder(page, "C", "B")).toThrow("no “B” under “C”");
    expect(leadingNumber("6.24 ± 0.11")).toBe(6.24);
    expect(() => leadingNumber("none")).toThrow("begins with no number");
  });
});
