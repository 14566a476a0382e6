import { readFileSync } from "node:fs";
import { join } from "node:path";
import { exampleIds, writeExample } from "../../site/scripts/examples.ts";
import { drawFigures } from "../../site/scripts/figures.ts";
import { root } from "../architecture/workspace.ts";
import { announcedStatus, runShown, splitConsole } from "./console.ts";
import { findBlocks } from "./examples.ts";
import { issuePage, loadIssues } from "./site-issues.ts";

export const docs = "site/src/content/docs";
export const issuesFile: string = `${docs}/reference/issue-codes.md`;
export const resultsFile = "reference-checks/choice-quality/RESULTS.md";

/** What a page holds between the marks of a figure: `<!-- figure: name -->` and `<!-- end of figure -->`. */
const FIGURE = /(<!-- figure: ([\w-]+) -->\n)((?:(?!<!--).*\n)*)(<!-- end of figure -->)/g;

/** What a page holds between the marks of an example that its reader can try: `<!-- try: name -->` and `<!-- end of try -->`. */
const EXAMPLE = /(<!-- try: ([\w-]+) -->\n)([\s\S]*?)(<!-- end of try -->)/g;

/** The page of issue codes as the catalogues have it now. */
export async function currentIssuePage(): Promise<string> {
  return issuePage(await loadIssues());
}

/** A page with its pictures drawn anew. */
export function withFigures(page: string): string {
  const figures = drawFigures(readFileSync(join(root, resultsFile), "utf8"));
  return page.replace(FIGURE, (_all, begin: string, name: string, _old: string, end: string) => {
    const figure = figures.find((each) => each.name === name);
    if (figure === undefined) throw new Error(`there is no figure called ${name}`);
    return `${begin}${figure.markup}\n${end}`;
  });
}

/** The names of the figures on a page. */
export function figuresOn(page: string): readonly string[] {
  return [...page.matchAll(FIGURE)].map((match) => match[2] ?? "");
}

/** A page with the functions that its reader can try as their files have them. */
export function withExamples(page: string): string {
  return page.replace(EXAMPLE, (_all, begin: string, name: string, _old: string, end: string) => {
    const id = exampleIds.find((each) => each === name);
    if (id === undefined) throw new Error(`there is no example called ${name}`);
    return `${begin}\n${writeExample(id)}\n\n${end}`;
  });
}

/** The names of the examples on a page that its reader can try. */
export function examplesOn(page: string): readonly string[] {
  return [...page.matchAll(EXAMPLE)].map((match) => match[2] ?? "");
}

/** What a page holds between the marks of the benchmarks. */
const BENCHMARKS = /(<!-- results of the benchmarks -->\n)([\s\S]*?)(<!-- end of results -->)/g;
const benchmarksFile = "benchmarks/RESULTS.md";

/** A page with the results of the benchmarks as they were written last, each table and paragraph with its origin. */
export function withBenchmarks(page: string): string {
  const passages = readFileSync(join(root, benchmarksFile), "utf8")
    .trim()
    .split(/\n{2,}/)
    .slice(2);
  const marked = passages.map((text) =>
    text.startsWith("## ") ? text : `<!-- from: ${benchmarksFile} -->\n\n${text}`,
  );
  return page.replace(BENCHMARKS, (_all, begin: string, _old: string, end: string) =>
    [begin, ...marked.map((text) => `${text}\n`), end].join("\n"),
  );
}

/** A page whose console blocks show what their commands print now. */
export function withOutputs(file: string, page: string): string {
  const lines = page.split("\n");
  const blocks = findBlocks(file, page, 1).filter(({ language }) => language === "console");
  for (const block of blocks.toReversed()) {
    const shown = splitConsole(block).map(({ command }) => {
      const { output, status, errors } = runShown(command);
      return { text: `$ ${command}${output === "" ? "" : `\n${output}`}`, status, errors };
    });
    const last = shown.at(-1);
    if (last !== undefined && last.status !== announcedStatus(block)) {
      throw new Error(`${file}:${block.line}: exit status ${last.status}\n${last.errors}`);
    }
    const text = shown
      .map((each) => each.text)
      .join("\n")
      .split("\n");
    lines.splice(block.line - 1, block.code.split("\n").length, ...text);
  }
  return lines.join("\n");
}
