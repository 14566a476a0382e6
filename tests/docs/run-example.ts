import ts from "typescript";
import { type Claim, claimedExpression, findClaims, UncheckableClaim } from "./claims.ts";
import type { Block } from "./examples.ts";

/** One claim of an example with the value that the example really had there. */
export interface Checked {
  /** The line of the file that holds the claim. */
  readonly line: number;
  readonly claimed: unknown;
  readonly actual: unknown;
}

type AsyncBody = (
  require: (name: string) => unknown,
  exports: object,
  record: (claim: number, actual: unknown) => void,
  at: (line: number) => void,
) => Promise<void>;

/**
 * Runs an example as a reader would, and pairs each of its claims with what came out.
 *
 * @throws Error with the file and line when it claims what cannot be checked, throws, or never gets to
 * one of its claims.
 */
export async function runExample(block: Block): Promise<readonly Checked[]> {
  const source = ts.createSourceFile("example.ts", block.code, ts.ScriptTarget.Latest, true);
  const fail = (message: string, line: number): never => {
    throw new Error(`${block.file}:${block.line + line}: ${message}`);
  };
  let claims: readonly Claim[] = [];
  try {
    claims = findClaims(source);
  } catch (error) {
    if (!(error instanceof UncheckableClaim)) throw error;
    fail(error.message, error.line);
  }

  const modules = new Map<string, unknown>();
  for (const name of importedModules(source)) modules.set(name, await import(name));

  const actual = new Map<number, unknown>();
  let reached = 0;
  const body = compile(source, claims);
  try {
    await body(
      (name) => modules.get(name),
      {},
      (claim, value) => actual.set(claim, snapshot(value)),
      (line) => {
        reached = line;
      },
    );
  } catch (error) {
    fail(`throws ${error instanceof Error ? `${error.name}: ${error.message}` : String(error)}`, reached);
  }
  return claims.map(({ line, value }, index) => {
    if (!actual.has(index)) fail("is never reached", line);
    return { line: block.line + line, claimed: value, actual: actual.get(index) };
  });
}

/** The example as a function that reports each claimed value at the moment of its claim. */
function compile(source: ts.SourceFile, claims: readonly Claim[]): AsyncBody {
  const text = source.statements
    .map((statement) => {
      const line = source.getLineAndCharacterOfPosition(statement.getStart(source)).line;
      const mark = ts.isImportDeclaration(statement) ? "" : `__at(${line});`;
      const own = claims.flatMap((claim, index) => (claim.statement === statement ? [index] : []));
      const expression = claimedExpression(statement);
      const [index] = own;
      if (index === undefined) return `${mark}${statement.getText(source)}`;
      if (expression === undefined) return `${mark}${statement.getText(source)}`;
      if (ts.isExpressionStatement(statement)) return `${mark}__record(${index}, ${expression});`;
      return `${mark}${statement.getText(source)}\n__record(${index}, ${expression});`;
    })
    .join("\n");
  const { outputText } = ts.transpileModule(text, {
    compilerOptions: {
      module: ts.ModuleKind.CommonJS,
      target: ts.ScriptTarget.ES2023,
      verbatimModuleSyntax: false,
    },
  });
  const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor;
  return new AsyncFunction("require", "exports", "__record", "__at", outputText);
}

/** The value as it is now: what the example does to it later is another matter. */
function snapshot(value: unknown): unknown {
  try {
    return structuredClone(value);
  } catch {
    return value; // It holds a function.
  }
}

function importedModules(source: ts.SourceFile): readonly string[] {
  return source.statements.flatMap((statement) =>
    ts.isImportDeclaration(statement) && ts.isStringLiteral(statement.moduleSpecifier)
      ? [statement.moduleSpecifier.text]
      : [],
  );
}
