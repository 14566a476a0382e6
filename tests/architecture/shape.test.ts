import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkManifestShape } from "./manifest-shape.ts";
import { findImportTimeCode, findNonReexports, holdsCode } from "./source-shape.ts";
import { listEntryPoints, readWorkspace, root } from "./workspace.ts";

const packages = readWorkspace().filter((entry) => entry.folder !== "site");
const workspaceVersion: string = JSON.parse(readFileSync(join(root, "package.json"), "utf8")).version;
const licence = readFileSync(join(root, "LICENSE"), "utf8");

/** Files with code that may be longer than the rest, each with its reason. */
const LONG_FILES: ReadonlyMap<string, string> = new Map();
const LONGEST = 200;

/** What tools leave in a package's folder and git ignores. */
const LEFT_BY_TOOLS = /^(dist|node_modules|.*\.tsbuildinfo)$/;

test("there are packages to look at", () => {
  expect(packages.length).toBeGreaterThanOrEqual(10);
});

describe.each(packages)("$folder", ({ name, folder, manifest, files }) => {
  test("holds the same files as every package", () => {
    const entries = readdirSync(join(root, folder)).filter((entry) => !LEFT_BY_TOOLS.test(entry));
    const command = manifest.bin === undefined ? [] : ["bin", "demo"];
    expect(entries.sort()).toEqual(
      ["LICENSE", "README.md", ...command, "package.json", "src", "tsconfig.json"].sort(),
    );
    expect(readFileSync(join(root, folder, "LICENSE"), "utf8")).toBe(licence);
  });

  test("has the manifest of every package", () => {
    expect(checkManifestShape(folder, manifest, workspaceVersion)).toEqual([]);
  });

  test("has the compiler settings of every package, and references what it depends on", () => {
    const ours = Object.keys(manifest.dependencies ?? {}).filter((key) =>
      /^(@tapewise\/|tapewise$)/.test(key),
    );
    const settings = JSON.parse(readFileSync(join(root, folder, "tsconfig.json"), "utf8"));
    const references: readonly { path: string }[] = settings.references;
    expect({ ...settings, references: references.map(({ path }) => path).sort() }).toEqual({
      extends: "../../tsconfig.base.json",
      compilerOptions: { rootDir: "src", outDir: "dist" },
      include: ["src"],
      references: ours.map((key) => `../${key.replace("@tapewise/", "")}`).sort(),
    });
  });

  test("has a README that begins with its name and shows an example", () => {
    const path = join(root, folder, "README.md");
    const readme = existsSync(path) ? readFileSync(path, "utf8") : "";
    expect(readme.split("\n")[0]).toBe(`# ${manifest.name}`);
    expect(readme).toMatch(/^```ts$/m);
  });

  test("has entry points that only re-export, by name", () => {
    const entryPoints = listEntryPoints(manifest);
    expect(entryPoints).toContain("src/index.ts");
    for (const path of entryPoints) {
      const file = files.find((each) => each.path === path);
      expect(file, path).toBeDefined();
      expect(file === undefined ? [] : findNonReexports(file)).toEqual([]);
    }
  });

  test("runs nothing at import", () => {
    expect(files.filter(isCode).flatMap(findImportTimeCode)).toEqual([]);
  });

  test("names its files in kebab-case", () => {
    const odd = files.filter(
      (file) => !/^src(\/[a-z0-9]+(-[a-z0-9]+)*)+((\.d)?\.ts|\.schema\.json|\.json)$/.test(file.path),
    );
    expect(odd.map((file) => file.path)).toEqual([]);
  });

  test(`keeps files with code within ${LONGEST} lines`, () => {
    const long = files
      .filter((file) => isCode(file) && holdsCode(file) && !LONG_FILES.has(`${name}/${file.path}`))
      .map((file) => ({ path: file.path, lines: file.text.trimEnd().split("\n").length }))
      .filter(({ lines }) => lines > LONGEST);
    expect(long).toEqual([]);
  });
});

test("the workspace's build covers every package", () => {
  const settings = JSON.parse(readFileSync(join(root, "tsconfig.json"), "utf8"));
  const built: readonly { path: string }[] = settings.references;
  expect(built.map(({ path }) => path).sort()).toEqual(packages.map(({ folder }) => folder).sort());
});

test("no exception to the length of files is left over", () => {
  const paths = new Set(packages.flatMap(({ name, files }) => files.map((file) => `${name}/${file.path}`)));
  expect([...LONG_FILES.keys()].filter((path) => !paths.has(path))).toEqual([]);
});

function isCode({ path }: { readonly path: string }): boolean {
  return path.endsWith(".ts");
}

describe("the checks are not blind", () => {
  const inFile = (text: string) => ({ path: "src/x.ts", text });

  test.each([
    ["start();", "is a statement that runs at import"],
    ["if (true) { }", "is a statement that runs at import"],
    ["export const now = Date.now();", "calls Date.now at import"],
    ["export const list = [1, 2].map((x) => start(x));", "calls start at import"],
    ["export const list = [1, 2].forEach((x) => x);", "calls [1, 2].forEach at import"],
    ["export const schema = z.object({});", "calls z.object at import"],
    [
      'import * as z from "zod"; const a = z.string(); export const b = start(a.min(1));',
      "calls start at import",
    ],
    ["export const today = new Date();", "makes a Date at import"],
    ["export let count = 0;", "exports a variable that can change"],
    ["export const text = tag`x`;", "runs code at import"],
    ["const a = { b: 1 }; export const c = (a.b = 2);", "assigns at import"],
    ["export class A { static made = start(); }", "calls start at import"],
    ["export class A { static { start(); } }", "has a static block"],
    ["export default start();", "is a statement that runs at import"],
    ["export enum Cut { Men }", "is a statement that runs at import"],
  ])("%s is caught", (text, complaint) => {
    expect(findImportTimeCode(inFile(text))).toContain(`src/x.ts:1: ${complaint}`);
  });

  test.each([
    ["export const f = () => start();"],
    ["export function f() { start(); }"],
    ["export class A { made = start(); }"],
    ["export const table = Object.freeze(new Map([['a', 1]]));"],
    ["export const list = [1, 2].map((x) => x + 1).join();"],
    ['import * as z from "zod"; const a = z.string(); export const b = z.object({ a: a.min(1) });'],
    ["export const issues = defineIssues({});"],
    ["export const table = /* @__PURE__ */ build([1, 2]);"],
    ["export const text = `a b`;"],
    ["export type T = ReturnType<typeof import('./y.ts').f>;"],
  ])("%s is let through", (text) => {
    expect(findImportTimeCode(inFile(text))).toEqual([]);
  });

  test.each([
    ['export * from "./a.ts";', "src/x.ts:1: re-exports everything, without names"],
    ["export const a = 1;", "src/x.ts:1: is no re-export"],
    ['import "./a.ts";', "src/x.ts:1: is no re-export"],
    ["export {};", "src/x.ts:1: is no re-export"],
    ["", "src/x.ts: re-exports nothing"],
  ])("as an index, %j is caught", (text, complaint) => {
    expect(findNonReexports(inFile(text))).toEqual([complaint]);
  });

  test("a manifest that strays is caught, field by field", () => {
    const [sample] = packages;
    if (sample === undefined) throw new Error("no package");
    const { name, ...rest } = sample.manifest;
    const strayed = { ...rest, name, sideEffects: true, exports: { ".": "./dist/index.js" } };
    const found = checkManifestShape(sample.folder, strayed, "9.9.9");
    for (const what of ["order of fields", "version is", "sideEffects is true", "last of exports"]) {
      expect(found.filter((complaint) => complaint.includes(what))).toHaveLength(1);
    }
  });

  test("a file counts as code as soon as it holds a function", () => {
    expect(holdsCode(inFile("export const a = { b: [1, 2] } as const; export type F = () => void;"))).toBe(
      false,
    );
    expect(holdsCode(inFile("export const a = { b: () => 1 };"))).toBe(true);
    expect(holdsCode(inFile("export class A {}"))).toBe(true);
  });
});
