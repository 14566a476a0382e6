import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { listEntryPoints, readWorkspace, root } from "../architecture/workspace.ts";
import { checkDocstrings } from "./docstrings.ts";

const entryPoints = readWorkspace().flatMap(({ folder, manifest }) =>
  listEntryPoints(manifest).map((path) => join(root, folder, path)),
);

test("every public export has a docstring, and every public function an example", () => {
  const report = checkDocstrings(entryPoints);
  expect(report.violations).toEqual([]);
  expect(report.exports).toBeGreaterThan(2 * entryPoints.length);
  expect(report.functions).toBeGreaterThan(entryPoints.length);
});

test("the check is not blind", () => {
  const folder = mkdtempSync(join(tmpdir(), "tapewise-docstrings-"));
  try {
    const index = join(folder, "index.ts");
    writeFileSync(
      index,
      'export { bare, documented, shown } from "./parts.ts";\nexport type { Bare } from "./parts.ts";\n',
    );
    const parts = [
      "export function bare(): void {}",
      "/** Says what it does. */",
      "export const documented = (): number => 1;",
      "/**",
      " * Shows what it does.",
      " *",
      " * @example",
      " * ```ts",
      " * shown(); // => 1",
      " * ```",
      " */",
      "export function shown(): number { return 1; }",
      "export interface Bare { a: 1 }",
    ];
    writeFileSync(join(folder, "parts.ts"), parts.join("\n"));
    const { violations, exports, functions } = checkDocstrings([index]);
    expect(violations.map((violation) => violation.replace(/^.*parts\.ts/, "parts.ts"))).toEqual([
      "parts.ts:13: Bare has no docstring",
      "parts.ts:1: bare has no @example with a block of ts",
      "parts.ts:1: bare has no docstring",
      "parts.ts:3: documented has no @example with a block of ts",
    ]);
    expect([exports, functions]).toEqual([4, 3]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
