import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { readWorkspace, root } from "../architecture/workspace.ts";

/** A fenced block of a page or a docstring. `line` is the line, from 1, of its first line of code. */
export interface Block {
  readonly file: string;
  readonly line: number;
  readonly language: string;
  /** The words after the language, such as `no-run`. */
  readonly flags: readonly string[];
  readonly code: string;
}

/** The pages whose blocks are checked: READMEs, the developers' guide and the site. */
export function listPages(): readonly string[] {
  const pages = ["README.md", "DEVELOPERS.md", ...readWorkspace().map(({ folder }) => `${folder}/README.md`)];
  const site = "site/src/content";
  try {
    for (const entry of readdirSync(join(root, site), { recursive: true, encoding: "utf8" })) {
      // Pages made from docstrings would only repeat their examples.
      if (/\.mdx?$/.test(entry) && !entry.startsWith("docs/api/")) pages.push(`${site}/${entry}`);
    }
  } catch {
    // There is no site yet.
  }
  return pages.filter(exists);
}

/** Every block of every page and of every docstring. */
export function listBlocks(): readonly Block[] {
  const pages = listPages().flatMap((file) => findBlocks(file, readFileSync(join(root, file), "utf8"), 1));
  const docstrings = readWorkspace().flatMap(({ folder, files }) =>
    files
      .filter(({ path }) => path.endsWith(".ts"))
      .flatMap(({ path, text }) =>
        findDocstrings(text).flatMap(({ comment, line }) => findBlocks(`${folder}/${path}`, comment, line)),
      ),
  );
  return [...pages, ...docstrings];
}

/** Docstrings whose `@example` has no block of TypeScript, so that nothing of it is run. */
export function listBareExamples(): readonly string[] {
  return readWorkspace().flatMap(({ folder, files }) =>
    files
      .filter(({ path }) => path.endsWith(".ts"))
      .flatMap(({ path, text }) =>
        findDocstrings(text)
          .filter(({ comment }) =>
            comment
              .split(/^@example\b/m)
              .slice(1)
              .some((part) => !part.includes("```ts")),
          )
          .map(({ line }) => `${folder}/${path}:${line}`),
      ),
  );
}

/** Finds the fenced blocks of a markdown text whose first line is line `firstLine` of its file. */
export function findBlocks(file: string, text: string, firstLine: number): readonly Block[] {
  const blocks: Block[] = [];
  const lines = text.split("\n");
  for (let start = 0; start < lines.length; start += 1) {
    const fence = /^( *)(`{3,})(\S*)(.*)$/.exec(lines[start] ?? "");
    if (fence === null) continue;
    const [, indent = "", ticks = "", language = "", flags = ""] = fence;
    const length = lines.slice(start + 1).findIndex((line) => line.trim() === ticks);
    if (length < 0) throw new Error(`${file}:${firstLine + start}: a block that never ends`);
    const code = lines
      .slice(start + 1, start + 1 + length)
      .map((line) => (line.startsWith(indent) ? line.slice(indent.length) : line.trimStart()));
    blocks.push({
      file,
      line: firstLine + start + 1,
      language,
      flags: flags.split(/\s+/).filter((flag) => flag !== ""),
      code: code.join("\n"),
    });
    start += length + 1;
  }
  return blocks;
}

/** The docstrings of a source text, without their stars, each with its first line in the file. */
export function findDocstrings(text: string): readonly { comment: string; line: number }[] {
  const source = ts.createSourceFile("x.ts", text, ts.ScriptTarget.Latest, true);
  const found = new Map<number, { comment: string; line: number }>();
  const visit = (node: ts.Node): void => {
    for (const doc of ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc)) {
      const line = source.getLineAndCharacterOfPosition(doc.pos).line + 1;
      const comment = text
        .slice(doc.pos, doc.end)
        .replace(/^\/\*\*/, "")
        .replace(/\*\/$/, "")
        .split("\n")
        .map((each) => each.replace(/^\s*\* ?/, ""))
        .join("\n");
      found.set(doc.pos, { comment, line });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return [...found.values()];
}

function exists(file: string): boolean {
  try {
    readFileSync(join(root, file));
    return true;
  } catch {
    return false;
  }
}
