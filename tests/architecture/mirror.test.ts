import { existsSync, readdirSync } from "node:fs";
import { join, posix } from "node:path";
import { describe, expect, test } from "vitest";
import { exportsFunction, listReexports } from "./source-shape.ts";
import { listEntryPoints, type Package, readWorkspace, root } from "./workspace.ts";

/** Public source files without a test file of their own, each with its reason. */
const UNMIRRORED: ReadonlyMap<string, string> = new Map();

/** Test files that mirror no source file, each with its reason. */
const EXTRA_TESTS: ReadonlyMap<string, string> = new Map();

const packages = readWorkspace().filter((entry) => entry.folder !== "site");

describe.each(packages)("tests of $folder", (entry) => {
  test("every public function has the test file of its source file", () => {
    const published = publishedFiles(entry);
    expect(published.size).toBeGreaterThan(0);
    const missing = entry.files
      .filter((file) => published.has(file.path) && exportsFunction(file))
      .map((file) => testOf(entry, file.path))
      .filter((path) => !existsSync(join(root, path)) && !UNMIRRORED.has(path));
    expect(missing).toEqual([]);
  });

  test("every test file has its source file", () => {
    const folder = `tests/${entry.name}`;
    const sources = new Set(entry.files.map((file) => testOf(entry, file.path)));
    const found = readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((file) => file.isFile() && file.name.endsWith(".test.ts"))
      .map((file) => join(file.parentPath, file.name).slice(root.length).replaceAll("\\", "/"));
    expect(found.filter((path) => !sources.has(path) && !EXTRA_TESTS.has(path))).toEqual([]);
    expect(found.length).toBeGreaterThan(0);
  });
});

test("no exception is left over", () => {
  expect([...UNMIRRORED.keys()].filter((path) => existsSync(join(root, path)))).toEqual([]);
  expect([...EXTRA_TESTS.keys()].filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

function testOf(entry: Package, path: string): string {
  return path.replace(/^src\//, `tests/${entry.name}/`).replace(/\.ts$/, ".test.ts");
}

/** The files that a package's entry points re-export, followed through files that re-export in turn. */
function publishedFiles(entry: Package): ReadonlySet<string> {
  const byPath = new Map(entry.files.map((file) => [file.path, file]));
  const published = new Set<string>();
  const follow = (path: string): void => {
    const file = byPath.get(path);
    if (file === undefined || published.has(path)) return;
    published.add(path);
    for (const specifier of listReexports(file)) follow(posix.join(posix.dirname(path), specifier));
  };
  for (const path of listEntryPoints(entry.manifest)) follow(path);
  return published;
}
