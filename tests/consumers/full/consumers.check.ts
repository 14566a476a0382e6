import { cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ANSWERS, compile, installProject, SETTINGS } from "../crew-project.ts";
import { makeFolder, run } from "../packed.ts";
import { openPage } from "./serve.ts";
import { COMPILERS, compilerAt, installTools, NODES, nodeAt } from "./tools.ts";

const folder = makeFolder();
afterAll(folder.remove);
const tools = makeFolder();
afterAll(tools.remove);

beforeAll(() => {
  installProject(folder.path);
  cpSync(join(import.meta.dirname, "../page"), join(folder.path, "page"), { recursive: true });
  installTools(tools.path);
});

/** The reading that every consumer tries lies well inside M: see the answers of the project. */
const PICKED = "M fits";

describe.each(COMPILERS)("TypeScript %s", (version) => {
  test.each(SETTINGS)("compiles the project with $moduleResolution, declarations included", (settings) => {
    const compiler = compilerAt(tools.path, version);
    expect(run(compiler[0] ?? "", [...compiler.slice(1), "--version"]).stdout).toContain(
      `Version ${version}`,
    );
    expect(compile(folder.path, compiler, settings)).toBe("");
  });
});

describe.each(NODES)("Node %s", (major) => {
  const ask = (script: string) => {
    const { stdout, stderr } = run(nodeAt(tools.path, major), ["--input-type=module", "-e", script], {
      cwd: folder.path,
    });
    expect(stderr).toBe("");
    return JSON.parse(stdout) as unknown;
  };

  test("is that Node", () => {
    expect(ask("console.log(JSON.stringify(process.versions.node))")).toMatch(new RegExp(`^${major}\\.`));
  });

  test.each(Object.entries(ANSWERS))("%s gives its answer", (name, answer) => {
    expect(ask(`import("./built/${name}.js").then((m) => console.log(JSON.stringify(m.answer)))`)).toEqual(
      answer,
    );
  });

  test("a worker thread gives the answer too", () => {
    const inside = `Promise.all([import("./built/choice.js"), import("node:worker_threads")])
      .then(([m, { parentPort }]) => parentPort.postMessage(m.answer))`;
    const script = `import { Worker } from "node:worker_threads";
      new Worker(${JSON.stringify(inside)}, { eval: true }).on("message", (answer) => console.log(JSON.stringify(answer)));`;
    expect(ask(script)).toEqual(ANSWERS.choice);
  });
});

describe("in the browser, the page and its worker choose", () => {
  test("as Vite builds them", async () => {
    const vite = join(tools.path, "node_modules/vite/bin/vite.js");
    const args = [vite, "build", "page", "--outDir", "../with-vite", "--emptyOutDir", "--logLevel", "warn"];
    const { stdout, stderr, status } = run(process.execPath, args, { cwd: folder.path });
    // On a busy machine it tells which of its own plugins took the time: one note, to the address that explains it.
    const warnings = stderr.replace(/\[PLUGIN_TIMINGS\][\s\S]*?#bundlertimings for more details\.\s*/, "");
    expect({ stdout, warnings, status }).toEqual({ stdout: "", warnings: "", status: 0 });
    expect(await openPage(join(folder.path, "with-vite"))).toEqual({
      answers: { page: PICKED, worker: PICKED },
      faults: [],
    });
  });

  test("as esbuild builds them", async () => {
    const page = join(folder.path, "page");
    const outdir = join(folder.path, "with-esbuild");
    const { warnings } = await build({
      entryPoints: [join(page, "page.ts"), join(page, "worker.ts")],
      absWorkingDir: folder.path,
      bundle: true,
      minify: true,
      format: "esm",
      target: "es2022",
      outdir,
    });
    expect(warnings).toEqual([]);
    mkdirSync(outdir, { recursive: true });
    const html = readFileSync(join(page, "index.html"), "utf8").replace("./page.ts", "./page.js");
    writeFileSync(join(outdir, "index.html"), html);
    expect(await openPage(outdir)).toEqual({ answers: { page: PICKED, worker: PICKED }, faults: [] });
  });
});
