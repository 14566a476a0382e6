import { join } from "node:path";
import ts from "typescript";
import { root } from "../architecture/workspace.ts";

/** One thing that an entry point exports, with what the compiler knows of it. */
export interface ExportedSymbol {
  readonly entryPoint: string;
  readonly name: string;
  readonly symbol: ts.Symbol;
  /** Absent for a whole package that the facade passes on: it is documented in its own place. */
  readonly declaration?: ts.Declaration;
  /** The docstring without its tags; empty where there is none. */
  readonly text: string;
}

/** Everything that the given entry points export, in the order of their names. */
export function listExports(entryPoints: readonly string[]): {
  readonly checker: ts.TypeChecker;
  readonly exports: readonly ExportedSymbol[];
} {
  const settings = ts.getParsedCommandLineOfConfigFile(
    join(root, "tests/tsconfig.json"),
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: () => {},
    },
  );
  if (settings === undefined) throw new Error("tests/tsconfig.json cannot be read");
  const program = ts.createProgram([...entryPoints], settings.options);
  const checker = program.getTypeChecker();
  const exports: ExportedSymbol[] = [];
  for (const entryPoint of entryPoints) {
    const source = program.getSourceFile(entryPoint);
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    for (const exported of module === undefined ? [] : checker.getExportsOfModule(module)) {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      const declaration = symbol.declarations?.[0];
      if (declaration === undefined) continue;
      exports.push({
        entryPoint,
        name: exported.name,
        symbol,
        ...(ts.isSourceFile(declaration) ? {} : { declaration }),
        text: ts.displayPartsToString(symbol.getDocumentationComment(checker)),
      });
    }
  }
  return { checker, exports };
}
