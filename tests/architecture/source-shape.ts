import ts from "typescript";
import type { SourceText } from "./workspace.ts";

/** Calls that only make a constant: nothing outside the module can tell that they ran. */
const CONSTANT_MAKERS: ReadonlySet<string> = new Set([
  "defineIssues",
  "BigInt",
  "Symbol",
  "Object.entries",
  "Object.freeze",
  "Object.fromEntries",
  "Object.keys",
  "Object.values",
  "Array.from",
  "Array.of",
  "Float64Array.from",
  "Float64Array.of",
]);
/** Methods that make a table out of another; what is passed to them does run. */
const TABLE_METHODS: ReadonlySet<string> = new Set(
  "concat entries filter flat flatMap join keys map slice toSorted values".split(" "),
);
const CONSTANT_CLASSES: ReadonlySet<string> = new Set(["Map", "Set", "RegExp", "Float64Array"]);

/** What runs when a module is imported and should not, one line each. */
export function findImportTimeCode(file: SourceText): readonly string[] {
  const source = parse(file);
  const found: string[] = [];
  const complain = (node: ts.Node, what: string): void => {
    found.push(`${file.path}:${lineOf(source, node)}: ${what}`);
  };

  const schemas = listSchemas(source);

  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isFunctionLike(node)) return;
    if (ts.isCallExpression(node)) {
      if (makesTable(node.expression)) {
        for (const callback of node.arguments.filter(ts.isArrowFunction)) visit(callback.body);
      } else if (!makesConstant(node.expression, schemas) && !isMarkedPure(node)) {
        complain(node, `calls ${node.expression.getText(source)} at import`);
      }
    } else if (ts.isNewExpression(node) && !CONSTANT_CLASSES.has(node.expression.getText(source))) {
      complain(node, `makes a ${node.expression.getText(source)} at import`);
    } else if (ts.isTaggedTemplateExpression(node) || ts.isAwaitExpression(node) || ts.isDecorator(node)) {
      complain(node, "runs code at import");
    } else if (ts.isBinaryExpression(node) && isAssignment(node.operatorToken.kind)) {
      complain(node, "assigns at import");
    }
    ts.forEachChild(node, visit);
  };

  for (const statement of source.statements) {
    if (ts.isVariableStatement(statement)) {
      const isConstant = (statement.declarationList.flags & ts.NodeFlags.Const) !== 0;
      if (!isConstant && statement.modifiers?.some(isExportKeyword)) {
        complain(statement, "exports a variable that can change");
      }
      visit(statement);
    } else if (ts.isClassDeclaration(statement)) {
      if (statement.members.some(ts.isClassStaticBlockDeclaration)) complain(statement, "has a static block");
      for (const member of statement.members) {
        const isStatic = ts.canHaveModifiers(member) && member.modifiers?.some(isStaticKeyword);
        if (isStatic) visit(member);
      }
    } else if (!isDeclaration(statement)) {
      complain(statement, "is a statement that runs at import");
    }
  }
  return found;
}

/** What an index holds besides re-exports by name. */
export function findNonReexports(file: SourceText): readonly string[] {
  const source = parse(file);
  const found: string[] = [];
  for (const statement of source.statements) {
    const at = `${file.path}:${lineOf(source, statement)}`;
    if (!ts.isExportDeclaration(statement) || statement.moduleSpecifier === undefined) {
      found.push(`${at}: is no re-export`);
    } else if (statement.exportClause === undefined) {
      found.push(`${at}: re-exports everything, without names`);
    }
  }
  if (source.statements.length === 0) found.push(`${file.path}: re-exports nothing`);
  return found;
}

/** The modules that a file re-exports from, as they are written. */
export function listReexports(file: SourceText): readonly string[] {
  return parse(file).statements.flatMap((statement) =>
    ts.isExportDeclaration(statement) &&
    statement.moduleSpecifier !== undefined &&
    ts.isStringLiteral(statement.moduleSpecifier)
      ? [statement.moduleSpecifier.text]
      : [],
  );
}

/** Whether a file exports a function: declared, or a constant that is one. */
export function exportsFunction(file: SourceText): boolean {
  return parse(file).statements.some((statement) => {
    const exported = ts.canHaveModifiers(statement) && statement.modifiers?.some(isExportKeyword) === true;
    if (!exported) return false;
    if (ts.isFunctionDeclaration(statement)) return true;
    return (
      ts.isVariableStatement(statement) &&
      statement.declarationList.declarations.some(
        ({ initializer }) => initializer !== undefined && ts.isFunctionLike(initializer),
      )
    );
  });
}

/** Whether a file holds any function or class at all; one without is a table of facts or of types. */
export function holdsCode(file: SourceText): boolean {
  const holds = (node: ts.Node): boolean =>
    (!ts.isTypeNode(node) && ts.isFunctionLike(node) && "body" in node && node.body !== undefined) ||
    ts.isClassDeclaration(node) ||
    ts.forEachChild(node, (child) => (holds(child) ? true : undefined)) === true;
  return holds(parse(file));
}

function parse(file: SourceText): ts.SourceFile {
  return ts.createSourceFile(file.path, file.text, ts.ScriptTarget.Latest, true);
}

function lineOf(source: ts.SourceFile, node: ts.Node): number {
  return source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
}

function makesTable(callee: ts.Expression): boolean {
  return ts.isPropertyAccessExpression(callee) && TABLE_METHODS.has(callee.name.text);
}

function makesConstant(callee: ts.Expression, schemas: ReadonlySet<string>): boolean {
  return CONSTANT_MAKERS.has(callee.getText()) || schemas.has(rootOf(callee));
}

/** Bundlers drop a call with this mark where its result is not used: its author vouches that it only computes. */
function isMarkedPure(node: ts.CallExpression): boolean {
  return node.getFullText().slice(0, node.getLeadingTriviaWidth()).includes("@__PURE__");
}

/** In a file that builds schemas: zod, and the constants and imports that schemas are built from. */
function listSchemas(source: ts.SourceFile): ReadonlySet<string> {
  const names = new Set<string>();
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement)) {
      const from = ts.isStringLiteral(statement.moduleSpecifier) ? statement.moduleSpecifier.text : "";
      const bindings = statement.importClause?.namedBindings;
      if (bindings === undefined) continue;
      if (from === "zod" && ts.isNamespaceImport(bindings)) names.add(bindings.name.text);
      if (from.endsWith("-schema.ts") && ts.isNamedImports(bindings)) {
        for (const element of bindings.elements) names.add(element.name.text);
      }
    } else if (ts.isVariableStatement(statement)) {
      for (const { name, initializer } of statement.declarationList.declarations) {
        const isSchema = initializer !== undefined && names.has(rootOf(initializer));
        if (isSchema && ts.isIdentifier(name)) names.add(name.text);
      }
    }
  }
  return names;
}

/** The name at the left end of a chain of calls and properties. */
function rootOf(expression: ts.Expression): string {
  let root = expression;
  while (ts.isPropertyAccessExpression(root) || ts.isCallExpression(root)) root = root.expression;
  return ts.isIdentifier(root) ? root.text : "";
}

function isAssignment(kind: ts.SyntaxKind): boolean {
  return kind >= ts.SyntaxKind.FirstAssignment && kind <= ts.SyntaxKind.LastAssignment;
}

function isDeclaration(statement: ts.Statement): boolean {
  return (
    ts.isImportDeclaration(statement) ||
    ts.isExportDeclaration(statement) ||
    ts.isFunctionDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement)
  );
}

function isStaticKeyword(modifier: ts.ModifierLike): boolean {
  return modifier.kind === ts.SyntaxKind.StaticKeyword;
}

function isExportKeyword(modifier: ts.ModifierLike): boolean {
  return modifier.kind === ts.SyntaxKind.ExportKeyword;
}
