import { relative } from "node:path";
import ts from "typescript";
import { root } from "../architecture/workspace.ts";
import { listExports } from "./list-exports.ts";

/** What the docstrings of some entry points leave out, and how many exports were looked at. */
export interface DocstringReport {
  readonly violations: readonly string[];
  readonly exports: number;
  readonly functions: number;
}

/**
 * Looks at everything that the given entry points export: each export has a docstring, and each
 * function an `@example` with a block of TypeScript in it.
 */
export function checkDocstrings(entryPoints: readonly string[]): DocstringReport {
  const violations = new Set<string>();
  let exports = 0;
  let functions = 0;

  const { checker, exports: exported } = listExports(entryPoints);
  for (const { name, symbol, declaration, text } of exported) {
    if (declaration === undefined) continue;
    exports += 1;
    const at = `${placeOf(declaration)}: ${name}`;
    if (text === "") violations.add(`${at} has no docstring`);
    if (!isFunction(declaration)) continue;
    functions += 1;
    const examples = symbol.getJsDocTags(checker).filter((tag) => tag.name === "example");
    if (!examples.some((tag) => ts.displayPartsToString(tag.text).includes("```ts\n"))) {
      violations.add(`${at} has no @example with a block of ts`);
    }
  }
  return { violations: [...violations].sort(), exports, functions };
}

function placeOf(declaration: ts.Declaration): string {
  const source = declaration.getSourceFile();
  const line = source.getLineAndCharacterOfPosition(declaration.getStart(source)).line + 1;
  return `${relative(root, source.fileName).replaceAll("\\", "/")}:${line}`;
}

function isFunction(declaration: ts.Declaration): boolean {
  if (ts.isFunctionDeclaration(declaration)) return true;
  const initializer = ts.isVariableDeclaration(declaration) ? declaration.initializer : undefined;
  return initializer !== undefined && ts.isFunctionLike(initializer);
}
