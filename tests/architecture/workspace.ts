import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder that holds the whole project. */
export const root: string = fileURLToPath(new URL("../..", import.meta.url));

/** The fields of a package.json that the checks read. */
export interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly repository?: Readonly<Record<string, string>>;
  readonly type?: string;
  readonly sideEffects?: boolean;
  readonly engines?: Readonly<Record<string, string>>;
  readonly exports?: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
  readonly files?: readonly string[];
  readonly bin?: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

/** A source file; its path is relative to its package's folder, with forward slashes. */
export interface SourceText {
  readonly path: string;
  readonly text: string;
}

/** A package as the checks see it. Held in memory, so that a check can be shown a faulty copy. */
export interface Package {
  readonly name: string;
  readonly folder: string;
  readonly manifest: Manifest;
  readonly files: readonly SourceText[];
}

/** Every package of the workspace, and the site once there is one. */
export function readWorkspace(): readonly Package[] {
  const folders = readdirSync(join(root, "packages"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => `packages/${entry.name}`);
  if (existsSync(join(root, "site/package.json"))) folders.push("site");
  return folders.sort().map(readPackage);
}

/** The source files that a package's entry points stand for, relative to its folder. */
export function listEntryPoints(manifest: Manifest): readonly string[] {
  return Object.values(manifest.exports ?? {}).flatMap((target) => {
    const source = typeof target === "string" ? undefined : target["@tapewise/source"];
    return source === undefined ? [] : [source.replace(/^\.\//, "")];
  });
}

function readPackage(folder: string): Package {
  const manifest: Manifest = JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8"));
  const name = folder.slice(folder.lastIndexOf("/") + 1);
  return { name, folder, manifest, files: readSources(folder) };
}

function readSources(folder: string): readonly SourceText[] {
  return readdirSync(join(root, folder, "src"), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const full = join(entry.parentPath, entry.name);
      const path = full.slice(join(root, folder).length + 1).replaceAll("\\", "/");
      return { path, text: readFileSync(full, "utf8") };
    })
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}
