import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { root } from "../architecture/workspace.ts";
import { ANSWERS, compile, installProject, SETTINGS } from "./crew-project.ts";
import { listNodes, makeFolder, run, type Tarball } from "./packed.ts";

const folder = makeFolder();
afterAll(folder.remove);
const nodes = listNodes();
const tsc = fileURLToPath(import.meta.resolve("typescript/bin/tsc"));
let tarballs: readonly Tarball[] = [];

beforeAll(() => {
  tarballs = installProject(folder.path);
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
    expect(compile(folder.path, [process.execPath, tsc], settings)).toBe("");
  },
);

/** Seconds of processor time that the compiler takes, so that other work on the machine counts less: the least of some runs. */
function compileSeconds(source: string): number {
  const compilerOptions = {
    module: "nodenext",
    target: "ES2022",
    lib: ["ES2023"],
    types: [],
    strict: true,
    skipLibCheck: false,
    noEmit: true,
  };
  const clock =
    'process.on("exit", () => { const { user, system } = process.cpuUsage(); console.log((user + system) / 1e6); });';
  writeFileSync(join(folder.path, "clock.cjs"), clock);
  writeFileSync(join(folder.path, "cost.ts"), source);
  writeFileSync(join(folder.path, "tsconfig.json"), JSON.stringify({ compilerOptions, files: ["cost.ts"] }));
  const runs = Array.from({ length: 3 }, () => {
    const args = ["--require", "./clock.cjs", tsc, "-p", "."];
    const { stdout, status } = run(process.execPath, args, { cwd: folder.path });
    expect({ stdout: stdout.trim(), status }).toEqual({
      stdout: expect.stringMatching(/^[\d.]+$/),
      status: 0,
    });
    return Number(stdout);
  });
  return Math.min(...runs);
}

test("compiling against the whole library takes less than 2 s more than compiling nothing", () => {
  const nothing = compileSeconds("export const size: string = 'M';\n");
  const all =
    'import { charts, fit, measurement, units } from "tapewise";\nexport const all: unknown[] = [charts, fit, measurement, units];\n';
  expect(nothing).toBeGreaterThan(0);
  expect(compileSeconds(all) - nothing).toBeLessThan(2);
}, 120_000);

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
