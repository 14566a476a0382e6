import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { root } from "../architecture/workspace.ts";
import { listNodes, listThirdParty, makeFolder, packAll, run, type Tarball } from "./packed.ts";

const folder = makeFolder();
afterAll(folder.remove);
const nodes = listNodes();
const tsc = fileURLToPath(import.meta.resolve("typescript/bin/tsc"));
let tarballs: readonly Tarball[] = [];

/** What each file of `project/` must answer. */
const ANSWERS = {
  units: {
    mm: 431.8, // 17 in of 25.4 mm (exact since 1959): 17 * 25.4 = 431.8
    doubled: "86.4 cm", // 863.6 mm = 86.36 cm
    bare: "length-no-unit",
    unmeasured: 19,
    refusesNaN: true,
  },
  choice: {
    // 45 cm lies 3 cm inside both ends of M, six standard deviations of 5 mm, and 2 cm outside S.
    pick: "M",
    verdict: "fits",
    sure: true,
  },
  batch: { id: "p1", picks: ["M"] }, // The same reading as above.
  schema: { chart: true, number: false, draft: "https://json-schema.org/draft/2020-12/schema" },
};

const projectFiles = readdirSync(join(import.meta.dirname, "project"));

/** How projects compile: what the schemas are made with needs the names of a platform, the rest does not. */
const SETTINGS = [
  {
    module: "nodenext",
    moduleResolution: "nodenext",
    lib: ["ES2023"],
    files: projectFiles.filter((file) => file !== "schema.ts"),
  },
  { module: "esnext", moduleResolution: "bundler", lib: ["ES2023", "DOM"], files: projectFiles },
];

beforeAll(() => {
  tarballs = packAll(folder.path);
  cpSync(join(import.meta.dirname, "project"), folder.path, { recursive: true });
  const ours = tarballs.map(({ name, path }) => [name, `file:${path}`]);
  const theirs = [...listThirdParty()].map(([name, path]) => [name, `file:${path}`]);
  const manifest = {
    name: "crew",
    private: true,
    type: "module",
    dependencies: Object.fromEntries([...ours, ...theirs]),
  };
  writeFileSync(join(folder.path, "package.json"), JSON.stringify(manifest));
  const args =
    "install --offline --install-links --ignore-scripts --no-audit --no-fund --no-package-lock".split(" ");
  const { stderr, status } = run("npm", args, { cwd: folder.path });
  if (status !== 0) throw new Error(`npm install failed: ${stderr}`);
}, 180_000);

test("the packages are installed from their tarballs, not linked to the workspace", () => {
  const names = tarballs.map(({ name }) => name);
  expect(names.length).toBeGreaterThanOrEqual(10);
  for (const name of names) {
    const installed = join(folder.path, "node_modules", name);
    const manifest = JSON.parse(readFileSync(join(installed, "package.json"), "utf8"));
    const ours = JSON.parse(readFileSync(join(root, "node_modules", name, "package.json"), "utf8"));
    expect(manifest.version).toBe(ours.version);
    expect(
      run(process.execPath, ["-p", `require("fs").realpathSync(${JSON.stringify(installed)})`]).stdout,
    ).toContain("tapewise-consumer-");
  }
});

test.each(SETTINGS)(
  "the project compiles with module $module and $lib, and the packages' declarations with it",
  (settings) => {
    const { files, ...options } = settings;
    const compilerOptions = {
      ...options,
      target: "ES2023",
      types: [],
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      skipLibCheck: false,
      outDir: "built",
    };
    writeFileSync(join(folder.path, "tsconfig.json"), JSON.stringify({ compilerOptions, files }));
    const { stdout, status } = run(process.execPath, [tsc, "-p", folder.path]);
    expect(stdout).toBe("");
    expect(status).toBe(0);
  },
);

describe.each(nodes)("under Node $version", ({ path }) => {
  test.each(Object.entries(ANSWERS))("%s.ts gives its answer", (name, answer) => {
    const script = `import("./built/${name}.js").then((m) => console.log(JSON.stringify(m.answer)))`;
    const { stdout, stderr } = run(path, ["--input-type=module", "-e", script], { cwd: folder.path });
    expect(stderr).toBe("");
    expect(JSON.parse(stdout)).toEqual(answer);
  });

  test("every package can be imported alone", () => {
    for (const { name } of tarballs) {
      const script = `import(${JSON.stringify(name)}).then((m) => console.log(Object.keys(m).length > 0))`;
      const { stdout, stderr } = run(path, ["--input-type=module", "-e", script], { cwd: folder.path });
      expect({ name, stdout, stderr }).toEqual({ name, stdout: "true\n", stderr: "" });
    }
  });

  test("the installed command answers", () => {
    const bin = join(folder.path, "node_modules/tapewise/bin/tapewise.js");
    const version = JSON.parse(readFileSync(join(root, "packages/tapewise/package.json"), "utf8")).version;
    const asked = run(path, [bin, "--version"], { cwd: folder.path });
    expect(asked).toEqual({ stdout: `${version}\n`, stderr: "", status: 0 });
  });
});

test("npm links the command, and it can be executed", () => {
  const link = join(folder.path, "node_modules/.bin/tapewise");
  const { stdout, stderr, status } = run(link, ["--help"], { cwd: folder.path });
  expect(stderr).toBe("");
  expect(status).toBe(0);
  expect(stdout).toContain("tapewise");
});
