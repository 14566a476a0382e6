// What the packages cost whoever installs them and compiles against them: `npm run bench:install` writes INSTALL.md.
// It fetches the third-party packages, so it needs the network.
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const tsc = fileURLToPath(import.meta.resolve("typescript/bin/tsc"));
const folder = mkdtempSync(join(tmpdir(), "tapewise-install-"));
const REPEATS = 5;

/** Packages that nobody needs for a choice, and that bring a native engine, whose size is its own. */
const WITH_AN_ENGINE: readonly string[] = ["duckdb"];

/** The project that compiles nothing of ours, and two that do. */
const SOURCES: Readonly<Record<string, string>> = {
  empty: "export const size: string = 'M';\n",
  units:
    'import { parseLength } from "@tapewise/units";\nexport const mm: number = parseLength("43.2 cm").mm;\n',
  tapewise:
    'import { charts, fit, measurement, units } from "tapewise";\nexport const all: unknown[] = [charts, fit, measurement, units];\n',
};

function run(program: string, args: readonly string[], cwd: string): string {
  return execFileSync(program, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
}

function seconds(work: () => void): number {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

/** The run that other work on the machine disturbed least. */
function least(values: readonly number[]): number {
  return Math.min(...values);
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

/** Bytes of the files in a folder, by the package that each belongs to. */
function sizes(modules: string): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const entry of readdirSync(modules, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const full = join(entry.parentPath, entry.name);
    const name = /^(@[^/\\]+[/\\])?[^/\\]+/.exec(full.slice(modules.length + 1))?.[0] ?? "";
    found.set(name, (found.get(name) ?? 0) + statSync(full).size);
  }
  return found;
}

function main(): void {
  const packages = readdirSync(join(root, "packages"))
    .filter((name) => !WITH_AN_ENGINE.includes(name))
    .map((name) => `./packages/${name}`);
  run("npm", ["pack", ...packages, "--ignore-scripts", "--pack-destination", folder], root);
  const tarballs = readdirSync(folder).filter((name) => name.endsWith(".tgz"));
  const dependencies = tarballs.map((file) => [
    file.replace(/-\d+\..*$/, "").replace(/^tapewise-/, "@tapewise/"),
    `file:${file}`,
  ]);
  const manifest = {
    name: "crew",
    private: true,
    type: "module",
    dependencies: Object.fromEntries(dependencies),
  };
  writeFileSync(join(folder, "package.json"), JSON.stringify(manifest));
  run("npm", ["install", "--package-lock-only", "--ignore-scripts", "--no-audit", "--no-fund"], folder);

  const colds = Array.from({ length: 3 }, (_, n) => {
    const cache = join(folder, `cache-${n}`);
    mkdirSync(cache);
    rmSync(join(folder, "node_modules"), { recursive: true, force: true });
    return seconds(() =>
      run("npm", ["ci", "--cache", cache, "--ignore-scripts", "--no-audit", "--no-fund"], folder),
    );
  });
  const bytes = sizes(join(folder, "node_modules"));

  const options = {
    module: "nodenext",
    target: "ES2022",
    lib: ["ES2023"],
    types: [],
    strict: true,
    skipLibCheck: false,
    noEmit: true,
  };
  // Processor time and not time by the clock, so that other work on the machine is not counted.
  const clock =
    'process.on("exit", () => { const { user, system } = process.cpuUsage(); console.log((user + system) / 1e6); });';
  writeFileSync(join(folder, "clock.cjs"), clock);
  const times: Record<string, number[]> = { empty: [], units: [], tapewise: [] };
  for (let round = 0; round < REPEATS; round += 1) {
    for (const [name, text] of Object.entries(SOURCES)) {
      writeFileSync(join(folder, `${name}.ts`), text);
      writeFileSync(
        join(folder, "tsconfig.json"),
        JSON.stringify({ compilerOptions: options, files: [`${name}.ts`] }),
      );
      times[name]?.push(Number(run(process.execPath, ["--require", "./clock.cjs", tsc, "-p", "."], folder)));
    }
  }

  const mb = (count: number): string => `${(count / 1e6).toFixed(2)} MB`;
  const total = [...bytes.values()].reduce((sum, count) => sum + count, 0);
  const base = least(times.empty ?? []);
  const rows = [...bytes].filter(([, count]) => count > 5e4).sort((a, b) => b[1] - a[1]);
  const lines = [
    "# What installing costs",
    "",
    `Written by \`npm run bench:install\`: Node ${process.versions.node}, ${cpus().length} × ${cpus()[0]?.model ?? "unknown"}. All packages but those with a native engine (${WITH_AN_ENGINE.join(", ")}), from their tarballs; third-party packages from the registry with an empty cache.`,
    "",
    `- \`npm ci\` with an empty cache: ${median(colds).toFixed(1)} s (median of ${colds.length}; the network is in it).`,
    `- Installed: ${mb(total)} in ${bytes.size} folders of \`node_modules\`, sources and source maps included.`,
    `- \`tsc\` of a project with one file, \`skipLibCheck\` off, the least of ${REPEATS}: ${base.toFixed(2)} s without us, ${(least(times.units ?? []) - base).toFixed(2)} s more with \`@tapewise/units\`, ${(least(times.tapewise ?? []) - base).toFixed(2)} s more with \`tapewise\`. The budget is 2 s more.`,
    "",
    "| package | size |",
    "| --- | ---: |",
    ...rows.map(([name, count]) => `| \`${name}\` | ${mb(count)} |`),
    "",
  ];
  writeFileSync(join(root, "benchmarks/INSTALL.md"), lines.join("\n"));
  console.log(lines.join("\n"));
}

try {
  main();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
