import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import * as tapewise from "tapewise";
import { expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What a browser would be sent for a program, in bytes, and the files that it is made of. */
async function bundle(program: string) {
  const { outputFiles, metafile } = await build({
    stdin: { contents: program, resolveDir: root },
    bundle: true,
    format: "esm",
    platform: "browser",
    minify: true,
    write: false,
    metafile: true,
    conditions: ["@tapewise/source"],
    logLevel: "silent",
  });
  return { bytes: outputFiles[0]?.contents.length ?? 0, inputs: Object.keys(metafile.inputs) };
}

test("there is one namespace for each package below", () => {
  const manifest: { dependencies: Record<string, string> } = JSON.parse(
    readFileSync(`${root}/packages/tapewise/package.json`, "utf8"),
  );
  const packages = Object.keys(manifest.dependencies).flatMap((name) =>
    name.startsWith("@tapewise/") ? [name.slice("@tapewise/".length)] : [],
  );
  expect(Object.keys(tapewise).sort()).toEqual([...packages, "tapewiseIssues"].sort());
});

test("the whole library runs in a browser: no part of Node and none of the command is in it", async () => {
  const { inputs } = await bundle('import * as all from "tapewise"; console.log(all);');
  expect(inputs.length).toBeGreaterThan(50);
  expect(inputs.filter((path) => /commander|tapewise\/src\/command|^node:/.test(path))).toEqual([]);
});

test("whoever takes one namespace is sent that package and what it stands on", async () => {
  const { bytes, inputs } = await bundle(
    'import { units } from "tapewise"; console.log(units.parseLength("43.2 cm").mm);',
  );
  const whole = await bundle('import * as all from "tapewise"; console.log(all);');
  // Files that were looked at and left out are inputs too; what counts is what is sent.
  expect(inputs.length).toBeGreaterThan(0);
  expect(bytes).toBeLessThan(whole.bytes / 3);
});

test("zod is sent only with the subpaths that need it", async () => {
  const zod = (inputs: readonly string[]) =>
    inputs.filter((path) => path.includes("node_modules/zod/")).length;
  expect(zod((await bundle('import * as all from "tapewise"; console.log(all);')).inputs)).toBe(0);
  expect(
    zod((await bundle('import { personSchema } from "tapewise/schema"; console.log(personSchema);')).inputs),
  ).toBeGreaterThan(0);
});
