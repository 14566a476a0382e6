import { cpSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { listThirdParty, packAll, run, type Tarball } from "./packed.ts";

/** What each file of `project/` must answer. */
export const ANSWERS: Readonly<Record<string, unknown>> = {
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
  tables: { separator: ";", cell: { text: "Ann", line: 2, column: 10 } }, // After "Doily 45;", nine characters.
  log: { kept: true, sizes: ["M"], forgotten: 1 },
};

const projectFiles: readonly string[] = readdirSync(join(import.meta.dirname, "project"));

/** One way to compile the project. */
export interface CompilerSettings {
  readonly module: string;
  readonly moduleResolution: string;
  readonly lib: readonly string[];
  readonly files: readonly string[];
}

/** How projects compile: what the schemas are made with needs the names of a platform, the rest does not. */
export const SETTINGS: readonly CompilerSettings[] = [
  {
    module: "nodenext",
    moduleResolution: "nodenext",
    lib: ["ES2023"],
    files: projectFiles.filter((file) => file !== "schema.ts"),
  },
  { module: "esnext", moduleResolution: "bundler", lib: ["ES2023", "DOM"], files: projectFiles },
];

/** Packs every package and installs the tarballs in a fresh project, without a network. */
export function installProject(folder: string): readonly Tarball[] {
  const tarballs = packAll(folder);
  cpSync(join(import.meta.dirname, "project"), folder, { recursive: true });
  const ours = tarballs.map(({ name, path }) => [name, `file:${path}`]);
  const theirs = [...listThirdParty()].map(([name, path]) => [name, `file:${path}`]);
  const manifest = {
    name: "crew",
    private: true,
    type: "module",
    dependencies: Object.fromEntries([...ours, ...theirs]),
  };
  writeFileSync(join(folder, "package.json"), JSON.stringify(manifest));
  const args =
    "install --offline --install-links --ignore-scripts --no-audit --no-fund --no-package-lock".split(" ");
  const { stderr, status } = run("npm", args, { cwd: folder });
  if (status !== 0) throw new Error(`npm install failed: ${stderr}`);
  return tarballs;
}

/** What a compiler says about the project with some settings, the declarations of the packages included. */
export function compile(folder: string, compiler: readonly string[], settings: CompilerSettings): string {
  const { files, ...options } = settings;
  const compilerOptions = {
    ...options,
    target: "ES2022",
    types: [],
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    skipLibCheck: false,
    outDir: "built",
    rootDir: ".",
  };
  writeFileSync(join(folder, "tsconfig.json"), JSON.stringify({ compilerOptions, files }));
  const [program = "", ...args] = compiler;
  const { stdout, status } = run(program, [...args, "-p", folder]);
  return status === 0 ? stdout : `${stdout}\nstatus ${status}`;
}
