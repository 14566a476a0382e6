import type { Manifest } from "./workspace.ts";

const ORDER = [
  "name",
  "version",
  "description",
  "license",
  "repository",
  "type",
  "sideEffects",
  "engines",
  "exports",
  "files",
  "dependencies",
  "bin",
] as const;
const OPTIONAL: ReadonlySet<string> = new Set(["repository", "dependencies", "bin"]);

/** Where a library package's manifest differs from the shape that all of them share. */
export function checkManifestShape(folder: string, manifest: Manifest, version: string): readonly string[] {
  const found: string[] = [];
  const expectSame = (what: string, actual: unknown, expected: unknown): void => {
    const [shown, wanted] = [JSON.stringify(actual), JSON.stringify(expected)];
    if (shown !== wanted) found.push(`${folder}/package.json: ${what} is ${shown}, not ${wanted}`);
  };

  const fields = Object.keys(manifest);
  expectSame(
    "the order of fields",
    fields,
    ORDER.filter((field) => fields.includes(field) || !OPTIONAL.has(field)),
  );
  const name = folder.replace("packages/", "");
  expectSame("name", manifest.name, name === "tapewise" ? name : `@tapewise/${name}`);
  expectSame("version", manifest.version, version);
  expectSame("license", manifest.license, "MIT");
  if (manifest.repository !== undefined) {
    const { url } = manifest.repository;
    expectSame("repository", manifest.repository, { type: "git", url, directory: folder });
  }
  expectSame("type", manifest.type, "module");
  expectSame("sideEffects", manifest.sideEffects, false);
  expectSame("engines", manifest.engines, { node: ">=20" });
  expectSame("files", manifest.files, [
    ...(manifest.bin === undefined ? [] : ["bin", "demo"]),
    "dist",
    "src",
    "README.md",
  ]);

  const dependencies = Object.keys(manifest.dependencies ?? {});
  expectSame("the order of dependencies", dependencies, dependencies.toSorted());

  const entries = Object.entries(manifest.exports ?? {});
  expectSame("the first of exports", entries[0]?.[0], ".");
  expectSame("the last of exports", entries.at(-1), ["./package.json", "./package.json"]);
  for (const [entry, target] of entries.slice(0, -1)) {
    if (entry.endsWith(".schema.json")) {
      const isFile =
        typeof target === "string" && /^\.\/src\//.test(target) && target.endsWith(entry.slice(1));
      if (!isFile) expectSame(`exports["${entry}"]`, target, `./src/…${entry.slice(1)}`);
      continue;
    }
    const source = typeof target === "string" ? "" : (target["@tapewise/source"] ?? "");
    const stem = /^\.\/src\/(.+)\.ts$/.exec(source)?.[1] ?? "index";
    expectSame(`exports["${entry}"]`, target, {
      "@tapewise/source": `./src/${stem}.ts`,
      types: `./dist/${stem}.d.ts`,
      default: `./dist/${stem}.js`,
    });
  }
  return found;
}
