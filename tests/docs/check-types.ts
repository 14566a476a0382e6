import { join } from "node:path";
import ts from "typescript";
import { root } from "../architecture/workspace.ts";
import type { Block } from "./examples.ts";

/** Type-checks all examples in one program and returns what is wrong, by file and line. */
export function checkTypes(blocks: readonly Block[]): readonly string[] {
  const settings = ts.getParsedCommandLineOfConfigFile(
    join(root, "tests/tsconfig.json"),
    // Readers do not keep every value of an example, and examples are modules of their own.
    { noUnusedLocals: false, noUnusedParameters: false, verbatimModuleSyntax: false },
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => {} },
  );
  if (settings === undefined) throw new Error("tests/tsconfig.json cannot be read");

  const byPath = new Map(blocks.map((block, index) => [join(root, `tests/docs/example-${index}.ts`), block]));
  const host = ts.createCompilerHost(settings.options);
  const { fileExists, readFile } = host;
  const textOf = (path: string): string | undefined => {
    const block = byPath.get(path);
    return block === undefined ? undefined : `${block.code}\nexport {};\n`;
  };
  host.fileExists = (path) => byPath.has(path) || fileExists(path);
  host.readFile = (path) => textOf(path) ?? readFile(path);
  const getSourceFile = host.getSourceFile.bind(host);
  host.getSourceFile = (path, language) => {
    const text = textOf(path);
    return text === undefined
      ? getSourceFile(path, language)
      : ts.createSourceFile(path, text, language, true);
  };

  const program = ts.createProgram([...byPath.keys()], settings.options, host);
  return [...byPath].flatMap(([path, block]) => {
    const source = program.getSourceFile(path);
    if (source === undefined) return [`${block.file}:${block.line}: cannot be compiled`];
    return [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)].map(
      (each) => {
        const line = source.getLineAndCharacterOfPosition(each.start ?? 0).line;
        return `${block.file}:${block.line + line}: ${ts.flattenDiagnosticMessageText(each.messageText, " ")}`;
      },
    );
  });
}
