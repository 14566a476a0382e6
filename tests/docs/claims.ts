import ts from "typescript";

/** What an example says about itself: the value that a statement has, as a `// =>` comment. */
export interface Claim {
  /** The statement whose value is claimed. */
  readonly statement: ts.Statement;
  /** The line, from 0, that holds the claim. */
  readonly line: number;
  readonly value: unknown;
}

/** Thrown when an example claims something that cannot be checked. */
export class UncheckableClaim extends Error {
  readonly line: number;

  constructor(message: string, line: number) {
    super(message);
    this.line = line;
  }
}

/**
 * Finds the claims of an example: `expression; // => literal` on the statement's last line, or a
 * comment line `// => literal` after it. A literal may go on over following comment lines.
 */
export function findClaims(source: ts.SourceFile): readonly Claim[] {
  const lines = source.text.split("\n");
  const claims: Claim[] = [];
  for (let line = 0; line < lines.length; line += 1) {
    const start = /\/\/ ?=> ?(.*)$/.exec(lines[line] ?? "");
    if (start === null || isInsideText(source, line, start.index)) continue;
    let text = start[1] ?? "";
    let value = readLiteral(text);
    for (let next = line + 1; value === undefined; next += 1) {
      const more = /^\s*\/\/(?! ?=>)(.*)$/.exec(lines[next] ?? "");
      if (more === null) throw new UncheckableClaim(`"${text}" is no literal`, line);
      text += `\n${more[1]}`;
      value = readLiteral(text);
    }
    if (
      source.statements.some(
        (each) => lineOf(source, each.getStart(source)) <= line && line < lineOf(source, each.end),
      )
    ) {
      throw new UncheckableClaim("a claim in the middle of a statement", line);
    }
    const statement = source.statements.findLast((each) => lineOf(source, each.end) <= line);
    if (statement === undefined) throw new UncheckableClaim("a claim about nothing", line);
    claims.push({ statement, line, value: value.literal });
  }
  return claims;
}

/** The expression whose value a statement's claim is about. */
export function claimedExpression(statement: ts.Statement): string | undefined {
  if (ts.isExpressionStatement(statement)) {
    const { expression } = statement;
    const isPrint = ts.isCallExpression(expression) && expression.expression.getText() === "console.log";
    if (isPrint) return expression.arguments[0]?.getText();
    return expression.getText();
  }
  if (ts.isVariableStatement(statement)) {
    const [first, ...others] = statement.declarationList.declarations;
    if (first !== undefined && others.length === 0 && ts.isIdentifier(first.name)) return first.name.text;
  }
  return undefined;
}

function lineOf(source: ts.SourceFile, position: number): number {
  return source.getLineAndCharacterOfPosition(position).line;
}

function isInsideText(source: ts.SourceFile, line: number, column: number): boolean {
  const position = source.getPositionOfLineAndCharacter(line, column);
  const within = (node: ts.Node): boolean => {
    if (position < node.getStart(source) || position >= node.end) return false;
    if (ts.isStringLiteralLike(node) || ts.isTemplateExpression(node)) return true;
    return ts.forEachChild(node, (child) => (within(child) ? true : undefined)) === true;
  };
  return within(source);
}

/** Reads a JavaScript literal; `undefined` when the text is none, or not yet a whole one. */
export function readLiteral(text: string): { readonly literal: unknown } | undefined {
  const source = ts.createSourceFile("literal.ts", `(${text}\n)`, ts.ScriptTarget.Latest, true);
  const [statement, ...others] = source.statements;
  const broken =
    "parseDiagnostics" in source &&
    Array.isArray(source.parseDiagnostics) &&
    source.parseDiagnostics.length > 0;
  if (broken || statement === undefined || others.length > 0 || !ts.isExpressionStatement(statement))
    return undefined;
  return literalValue(statement.expression);
}

function literalValue(node: ts.Expression): { readonly literal: unknown } | undefined {
  if (ts.isParenthesizedExpression(node)) return literalValue(node.expression);
  if (ts.isStringLiteralLike(node)) return { literal: node.text };
  if (ts.isNumericLiteral(node)) return { literal: Number(node.text) };
  if (ts.isBigIntLiteral(node)) return { literal: BigInt(node.text.slice(0, -1)) };
  if (node.kind === ts.SyntaxKind.TrueKeyword) return { literal: true };
  if (node.kind === ts.SyntaxKind.FalseKeyword) return { literal: false };
  if (node.kind === ts.SyntaxKind.NullKeyword) return { literal: null };
  if (ts.isIdentifier(node)) {
    const named: Readonly<Record<string, unknown>> = {
      undefined,
      NaN: Number.NaN,
      Infinity: Number.POSITIVE_INFINITY,
    };
    return Object.hasOwn(named, node.text) ? { literal: named[node.text] } : undefined;
  }
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
    const inner = literalValue(node.operand)?.literal;
    return typeof inner === "number" || typeof inner === "bigint" ? { literal: -inner } : undefined;
  }
  if (ts.isArrayLiteralExpression(node)) {
    const items = node.elements.map(literalValue);
    return items.includes(undefined) ? undefined : { literal: items.map((item) => item?.literal) };
  }
  if (ts.isObjectLiteralExpression(node)) return literalObject(node);
  return undefined;
}

function literalObject(node: ts.ObjectLiteralExpression): { readonly literal: unknown } | undefined {
  const entries: [string, unknown][] = [];
  for (const property of node.properties) {
    if (!ts.isPropertyAssignment(property) || ts.isComputedPropertyName(property.name)) return undefined;
    const value = literalValue(property.initializer);
    if (value === undefined) return undefined;
    entries.push([property.name.text, value.literal]);
  }
  return { literal: Object.fromEntries(entries) };
}
