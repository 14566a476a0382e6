import { join } from "node:path";
import ts from "typescript";
import { type Package, root } from "../architecture/workspace.ts";
import { type ExportedSymbol, listExports } from "./list-exports.ts";

/** A package whose README lists its exports, as the workspace is read. */
type Listed = Pick<Package, "folder" | "manifest">;

const BEGIN = "<!-- exports: written by `npm run docs:write` from the docstrings -->";
const END = "<!-- end of exports -->";

/** The parts of READMEs that list what each package exports, by the package's folder. */
export function exportLists(packages: readonly Listed[]): ReadonlyMap<string, string> {
  const entries = packages.flatMap(entriesOf);
  const { exports } = listExports(entries.map(({ file }) => file));
  return new Map(
    packages.map(({ folder }) => {
      const lists = entries
        .filter((entry) => entry.folder === folder)
        .map(({ file, specifier }) =>
          entryList(
            specifier,
            exports.filter((one) => one.entryPoint === file),
          ),
        );
      return [folder, [BEGIN, "", "## Everything it exports", "", ...lists, END, ""].join("\n")];
    }),
  );
}

/** A README with its list of exports as it is now, at the end where there was none. */
export function withExports(readme: string, list: string): string {
  const begin = readme.indexOf(BEGIN);
  const end = readme.indexOf(END);
  if (begin < 0 !== end < 0) throw new Error("a list of exports begins or ends, but not both");
  if (begin < 0) return `${readme.trimEnd()}\n\n${list}`;
  return `${readme.slice(0, begin)}${list}${readme.slice(end + END.length).replace(/^\n/, "")}`;
}

/**
 * The first sentence of a docstring on one line, with links as code and without what a table or a page would take for
 * its own. A stop ends a sentence where a capital, a bracket or code comes next, and not after an abbreviation.
 */
export function firstSentence(text: string): string {
  const paragraph = (text.split(/\n\s*\n|\n\s*-\s/)[0] ?? "").replace(/\s+/g, " ").trim();
  const plain = paragraph.replace(/\{@link\s+([^}\s|]+)[^}]*\}/g, "`$1`");
  const stop = /(?<!\b(?:\p{Lu}|e\.g|i\.e|App|Eq|al|cf|Fig|No|vs))[.:](?=\s+["“(`\p{Lu}])/u.exec(plain);
  const sentence = (stop === null ? plain : plain.slice(0, stop.index)).replace(/[.:]$/, "");
  const outsideCode = (part: string, index: number): string =>
    (index % 2 === 0 ? part.replaceAll("<", "\\<") : `\`${part}\``).replaceAll("|", "\\|");
  return sentence.split("`").map(outsideCode).join("");
}

function entriesOf({ folder, manifest }: Listed) {
  return Object.entries(manifest.exports ?? {}).flatMap(([key, target]) => {
    const source = typeof target === "string" ? undefined : target["@tapewise/source"];
    if (source === undefined) return [];
    return [{ folder, file: join(root, folder, source), specifier: manifest.name + key.slice(1) }];
  });
}

function entryList(specifier: string, exports: readonly ExportedSymbol[]): string {
  const groups = [
    ["Functions", exports.filter(isFunction)],
    ["Values", exports.filter((one) => !isFunction(one) && !isType(one))],
    ["Types", exports.filter(isType)],
  ] as const;
  const tables = groups.flatMap(([title, rows]) => {
    if (rows.length === 0) return [];
    const sorted = rows.toSorted((a, b) => (a.name < b.name ? -1 : 1));
    const lines = sorted.map(
      (one) =>
        `| \`${one.name}\` | ${one.declaration === undefined ? passedOn(one) : firstSentence(one.text)} |`,
    );
    return [`| ${title} of \`${specifier}\` | |`, "| --- | --- |", ...lines, ""];
  });
  return tables.join("\n");
}

/** A whole package that the facade passes on as a namespace. */
function passedOn({ symbol }: ExportedSymbol): string {
  const file = symbol.declarations?.[0]?.getSourceFile().fileName ?? "";
  const name = /packages\/([\w-]+)\/src\//.exec(file)?.[1] ?? "";
  return `all of \`@tapewise/${name}\``;
}

function isFunction({ declaration }: ExportedSymbol): boolean {
  if (declaration === undefined) return false;
  if (ts.isFunctionDeclaration(declaration)) return true;
  const initializer = ts.isVariableDeclaration(declaration) ? declaration.initializer : undefined;
  return initializer !== undefined && ts.isFunctionLike(initializer);
}

function isType({ declaration }: ExportedSymbol): boolean {
  return (
    declaration !== undefined &&
    (ts.isInterfaceDeclaration(declaration) || ts.isTypeAliasDeclaration(declaration))
  );
}
