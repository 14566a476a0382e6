import ts from "typescript";

/** One place where a file names another module, in whatever way it does so. */
export interface ImportSite {
  /** What is imported; `undefined` where it is computed, so that nobody can check it. */
  readonly specifier: string | undefined;
  readonly kind:
    | "import"
    | "import type"
    | "re-export"
    | "type re-export"
    | "dynamic import"
    | "import() type"
    | "require"
    | "reference"
    | "augmentation";
  readonly line: number;
}

/** Every import of a TypeScript text: static, type-only, re-exported, dynamic and `import("x")` types. */
export function listImports(fileName: string, text: string): readonly ImportSite[] {
  const source = ts.createSourceFile(fileName, text, ts.ScriptTarget.Latest, true);
  const found: ImportSite[] = [];

  const add = (node: ts.Node | undefined, at: number, kind: ImportSite["kind"]): void => {
    const specifier = node !== undefined && ts.isStringLiteralLike(node) ? node.text : undefined;
    found.push({ specifier, kind, line: source.getLineAndCharacterOfPosition(at).line + 1 });
  };

  const visit = (node: ts.Node): void => {
    const at = node.getStart(source);
    if (ts.isImportDeclaration(node)) {
      const typeOnly = node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
      add(node.moduleSpecifier, at, typeOnly ? "import type" : "import");
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined) {
      add(node.moduleSpecifier, at, node.isTypeOnly ? "type re-export" : "re-export");
    } else if (ts.isImportEqualsDeclaration(node) && ts.isExternalModuleReference(node.moduleReference)) {
      add(node.moduleReference.expression, at, "require");
    } else if (ts.isImportTypeNode(node)) {
      add(ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined, at, "import() type");
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      add(node.arguments[0], at, "dynamic import");
    } else if (ts.isCallExpression(node) && isRequire(node.expression)) {
      add(node.arguments[0], at, "require");
    } else if (ts.isModuleDeclaration(node) && ts.isStringLiteral(node.name)) {
      add(node.name, at, "augmentation");
    }
    ts.forEachChild(node, visit);
  };

  for (const reference of [...source.referencedFiles, ...source.typeReferenceDirectives]) {
    const line = source.getLineAndCharacterOfPosition(reference.pos).line + 1;
    found.push({ specifier: reference.fileName, kind: "reference", line });
  }
  visit(source);
  return found;
}

function isRequire(callee: ts.Expression): boolean {
  if (ts.isIdentifier(callee)) return callee.text === "require";
  return ts.isPropertyAccessExpression(callee) && callee.getText() === "import.meta.resolve";
}
