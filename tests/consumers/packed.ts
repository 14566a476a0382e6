import { type SpawnSyncOptions, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, dirname, join } from "node:path";
import { root } from "../architecture/workspace.ts";

/** A package as npm packs it for publishing. */
export interface Tarball {
  readonly name: string;
  readonly path: string;
  /** Paths of the files in it, sorted. */
  readonly files: readonly string[];
}

/** What a program printed. */
export interface Printed {
  readonly stdout: string;
  readonly stderr: string;
  readonly status: number;
}

/** Runs a program under the running Node's own PATH, waits for it and returns what it printed. */
export function run(program: string, args: readonly string[], options: SpawnSyncOptions = {}): Printed {
  const path = `${dirname(process.execPath)}${delimiter}${process.env.PATH ?? ""}`;
  const { stdout, stderr, status, error } = spawnSync(program, [...args], {
    shell: process.platform === "win32",
    ...options,
    env: { ...process.env, PATH: path, NO_COLOR: "1", FORCE_COLOR: undefined, ...options.env },
    encoding: "utf8",
  });
  if (error !== undefined) throw error;
  return { stdout: String(stdout), stderr: String(stderr), status: status ?? -1 };
}

/** Makes a folder for the length of a test file. */
export function makeFolder(): { readonly path: string; readonly remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), "tapewise-consumer-"));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** Packs every package of the library into a folder, as it would be published. */
export function packAll(folder: string): readonly Tarball[] {
  const folders = readdirSync(join(root, "packages")).map((name) => `./packages/${name}`);
  const args = ["pack", ...folders, "--json", "--ignore-scripts", "--pack-destination", folder];
  const { stdout, stderr, status } = run("npm", args, { cwd: root });
  if (status !== 0) throw new Error(`npm pack failed: ${stderr}`);
  const packed: readonly { name: string; filename: string; files: readonly { path: string }[] }[] =
    JSON.parse(stdout);
  return packed.map(({ name, filename, files }) => ({
    name,
    path: join(folder, filename),
    files: files.map((file) => file.path).sort(),
  }));
}

type Locked = Readonly<
  Record<
    string,
    {
      version?: string;
      link?: boolean;
      resolved?: string;
      dependencies?: Record<string, string>;
      optionalDependencies?: Record<string, string>;
    }
  >
>;

/**
 * The third-party packages that ours need, by name, as folders of this workspace's own installation:
 * a fresh project takes them from there, so that installing it needs no network.
 */
export function listThirdParty(): ReadonlyMap<string, string> {
  const locked: Locked = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")).packages;
  const found = new Map<string, string>();
  const walk = (location: string): void => {
    const { dependencies, optionalDependencies } = locked[location] ?? {};
    for (const name of Object.keys({ ...dependencies, ...optionalDependencies })) {
      const key = locate(locked, name, location);
      // What is built for another system, and stands in the lockfile for its sake.
      if (optionalDependencies?.[name] !== undefined && !existsSync(join(root, key))) continue;
      const entry = locked[key];
      if (entry?.link === true) continue; // One of ours, which is walked on its own.
      const known = found.get(name);
      if (known === undefined) {
        found.set(name, key);
        walk(key);
      } else if (locked[known]?.version !== entry?.version) {
        throw new Error(`two versions of ${name} are needed: ${known} and ${key}`);
      }
    }
  };
  for (const location of Object.keys(locked)) if (/^packages\/[^/]+$/.test(location)) walk(location);
  return new Map([...found].map(([name, key]) => [name, join(root, key)]));
}

/** Where a package finds another one: beside itself, or in the nearest folder above. */
function locate(locked: Locked, name: string, from: string): string {
  for (let at = from; ; at = at.slice(0, Math.max(at.lastIndexOf("/"), 0))) {
    const key = `${at === "" ? "" : `${at}/`}node_modules/${name}`;
    if (locked[key] !== undefined) return key;
    if (at === "") throw new Error(`${name}, which ${from} needs, is not in the lockfile`);
  }
}

/** The Nodes to try: the running one, and every other from 20 on that the PATH leads to. */
export function listNodes(): readonly { readonly path: string; readonly version: string }[] {
  const nodes = [{ path: process.execPath, version: process.version }];
  for (const folder of (process.env.PATH ?? "").split(delimiter)) {
    const path = join(folder, process.platform === "win32" ? "node.exe" : "node");
    if (!existsSync(path)) continue;
    const version = run(path, ["--version"]).stdout.trim();
    const isNew = nodes.every((node) => node.version !== version);
    if (isNew && Number(/^v(\d+)/.exec(version)?.[1]) >= 20) nodes.push({ path, version });
  }
  return nodes;
}
