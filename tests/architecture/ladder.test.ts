import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkLadder } from "./check-ladder.ts";
import { ladder, nodeEntryPoints } from "./ladder.ts";
import { readLadderTable } from "./read-ladder-table.ts";
import { listEntryPoints, type Package, readWorkspace, root } from "./workspace.ts";

const workspace = readWorkspace();

describe("the ladder", () => {
  test("every rung stands on lower rungs only", () => {
    for (const rung of ladder.values()) {
      for (const name of rung.mayImport) {
        expect(ladder.get(name)?.level, `${rung.package} -> ${name}`).toBeLessThan(rung.level);
      }
    }
  });

  test("the table in DEVELOPERS.md says the same as the checks", () => {
    const rows = readLadderTable(readFileSync(join(root, "DEVELOPERS.md"), "utf8"));
    expect(rows).toEqual(
      [...ladder.values()].map((rung) => ({ ...rung, mayImport: [...rung.mayImport].sort() })),
    );
  });

  test("every import and every manifest obeys it", () => {
    const report = checkLadder(workspace, ladder);
    expect(report.violations).toEqual([]);
    expect(report.files).toBeGreaterThan(workspace.length);
    expect(report.imports).toBeGreaterThan(report.files);
  });
});

describe("the check is not blind", () => {
  /** A copy of the workspace in which one package has one more file, or another manifest. */
  function withFile(
    name: string,
    text: string,
    change: Partial<Package["manifest"]> = {},
  ): readonly Package[] {
    expect(workspace.map((entry) => entry.name)).toContain(name);
    return workspace.map((entry) =>
      entry.name === name
        ? {
            ...entry,
            manifest: { ...entry.manifest, ...change },
            files: [...entry.files, { path: "src/added.ts", text }],
          }
        : entry,
    );
  }

  /** What the check says about the copy and not about the workspace as it is. */
  function newViolations(copy: readonly Package[]): readonly string[] {
    const before = new Set(checkLadder(workspace, ladder).violations);
    return checkLadder(copy, ladder).violations.filter((violation) => !before.has(violation));
  }

  test.each([
    ["import", 'import { x } from "@tapewise/measurement";'],
    ["import", 'import { type X } from "@tapewise/measurement";'],
    ["import", 'import "@tapewise/measurement";'],
    ["import type", 'import type { X } from "@tapewise/measurement";'],
    ["import type", 'import type * as m from "@tapewise/measurement";'],
    ["re-export", 'export { x } from "@tapewise/measurement";'],
    ["re-export", 'export * from "@tapewise/measurement";'],
    ["type re-export", 'export type { X } from "@tapewise/measurement";'],
    ["dynamic import", 'export const load = () => import("@tapewise/measurement");'],
    ["dynamic import", "export const load = () => import(`@tapewise/measurement`);"],
    ["import() type", 'export type X = import("@tapewise/measurement").Estimate;'],
    ["import() type", 'export type M = typeof import("@tapewise/measurement");'],
    ["require", 'import m = require("@tapewise/measurement");'],
    ["require", 'export const m = require("@tapewise/measurement");'],
    ["require", 'export const m = import.meta.resolve("@tapewise/measurement");'],
    ["reference", '/// <reference types="@tapewise/measurement" />'],
    ["augmentation", 'declare module "@tapewise/measurement" { export interface X { a: 1 } }'],
  ])("charts is caught with a forbidden %s: %s", (kind, line) => {
    expect(newViolations(withFile("charts", `// first line\n${line}\n`))).toEqual([
      `packages/charts/src/added.ts:2: ${kind} of "@tapewise/measurement", which charts may not import`,
    ]);
  });

  test.each([
    ["units", "@tapewise/intervals"],
    ["fit", "@tapewise/population"],
    ["outcome", "tapewise"],
    ["outcome", "@tapewise/nowhere"],
  ])("%s is caught importing %s", (name, target) => {
    expect(newViolations(withFile(name, `import "${target}";`))).toEqual([
      `packages/${name}/src/added.ts:1: import of "${target}", which ${name} may not import`,
    ]);
  });

  test.each([
    ['import "zod";', 'import of "zod", which packages/outcome/package.json does not declare'],
    ['import "node:fs";', 'import of "node:fs" outside the command'],
    ['import "fs";', 'import of "fs" without "node:"'],
    [
      'import "../../units/src/millimetres.ts";',
      'import of "../../units/src/millimetres.ts" leaves the package\'s sources',
    ],
    ['import "./nowhere.ts";', 'import of "./nowhere.ts", which is no file of the package'],
    ['import "@tapewise/outcome";', 'import of "@tapewise/outcome", the package itself'],
    [
      "export const load = (name: string) => import(name);",
      "dynamic import of a computed name, which nobody can check",
    ],
  ])("outcome is caught with %s", (line, complaint) => {
    expect(newViolations(withFile("outcome", line))).toContain(
      `packages/outcome/src/added.ts:1: ${complaint}`,
    );
  });

  test("a deep import past a package's entry points is caught", () => {
    expect(newViolations(withFile("units", 'import "@tapewise/outcome/src/issue.ts";'))).toEqual([
      'packages/units/src/added.ts:1: import of "@tapewise/outcome/src/issue.ts", which is no entry point of @tapewise/outcome',
    ]);
  });

  test("an allowed import that the manifest does not declare is caught", () => {
    expect(newViolations(withFile("units", 'import "@tapewise/outcome";', { dependencies: {} }))).toContain(
      'packages/units/src/added.ts:1: import of "@tapewise/outcome", which packages/units/package.json does not declare',
    );
  });

  test("a manifest is caught declaring what is forbidden, never imported, or of another version", () => {
    const dependencies = { "@tapewise/charts": "0.0.9", "left-over": "1.0.0" };
    const { version } = workspace.find((entry) => entry.name === "charts")?.manifest ?? {};
    expect(newViolations(withFile("outcome", "export {};", { dependencies }))).toEqual([
      "packages/outcome/package.json: declares @tapewise/charts, which outcome may not import",
      `packages/outcome/package.json: declares @tapewise/charts 0.0.9, but the workspace has ${version}`,
      "packages/outcome/package.json: declares @tapewise/charts but never imports it",
      "packages/outcome/package.json: declares left-over but never imports it",
    ]);
  });

  test("a circle of files is caught, even if types alone close it", () => {
    const copy = workspace.map((entry) =>
      entry.name === "outcome"
        ? {
            ...entry,
            files: [
              ...entry.files,
              { path: "src/a.ts", text: 'import { b } from "./deep/b.ts";' },
              { path: "src/deep/b.ts", text: 'import type { A } from "../a.ts";' },
            ],
          }
        : entry,
    );
    expect(newViolations(copy)).toEqual([
      "packages/outcome: circle of imports src/a.ts -> src/deep/b.ts -> src/a.ts",
    ]);
  });

  test("Node in what the facade's entry point reaches is caught", () => {
    const copy = workspace.map((entry) =>
      entry.name === "tapewise"
        ? {
            ...entry,
            files: [
              ...entry.files.map((file) =>
                file.path === "src/index.ts" ? { ...file, text: `${file.text}\nimport "./added.ts";` } : file,
              ),
              { path: "src/added.ts", text: 'import "node:fs";' },
            ],
          }
        : entry,
    );
    expect(newViolations(copy)).toEqual([
      "packages/tapewise/src/added.ts:1: needs Node but is reached from an entry point of the library",
    ]);
  });

  test("every entry point for Node is there", () => {
    const paths = workspace.flatMap(({ folder, manifest }) =>
      listEntryPoints(manifest).map((path) => `${folder}/${path}`),
    );
    expect([...nodeEntryPoints].filter((path) => !paths.includes(path))).toEqual([]);
  });

  test("a package without a rung is caught", () => {
    const stray = { ...workspace[0], name: "stray", folder: "packages/stray" } as Package;
    expect(newViolations([...workspace, stray])).toEqual(["packages/stray: has no rung on the ladder"]);
  });

  test("a page of the site is read too", () => {
    const page =
      '---\nimport { units } from "tapewise";\nimport "@tapewise/units";\n---\n<p>import "zod"</p>\n';
    const site: Package = {
      name: "site",
      folder: "site",
      manifest: { name: "site", version: "0.1.0", dependencies: { tapewise: "0.1.0" } },
      files: [{ path: "src/page.astro", text: page }],
    };
    const copy = [...workspace.filter((entry) => entry.name !== "site"), site];
    expect(newViolations(copy)).toEqual([
      'site/src/page.astro:3: import of "@tapewise/units", which site may not import',
    ]);
  });

  test("finding nothing is a violation", () => {
    expect(checkLadder([], ladder).violations).toEqual(["no source file was found", "no import was found"]);
  });
});

describe("the table's reader", () => {
  const head = "| level | package | subject | may import |\n|---|---|---|---|\n";

  test("refuses a clause it does not know", () => {
    expect(() => readLadderTable(`${head}| 0 | \`outcome\` | issues | everything |`)).toThrow("everything");
  });

  test("refuses a package it does not know", () => {
    expect(() => readLadderTable(`${head}| 1 | \`units\` | lengths | \`outcome\` |`)).toThrow("outcome");
  });

  test("refuses a text without the table", () => {
    expect(() => readLadderTable("# Nothing here")).toThrow("no table");
  });
});
