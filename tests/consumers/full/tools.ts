import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { run } from "../packed.ts";

/** The Nodes that the packages promise to run on, as the registry packs them; for macOS it has none. */
export const NODES: readonly string[] = ["20", "22", "24"];

/** The compilers that the declarations are read by, from the oldest that is supported to the newest. */
export const COMPILERS: readonly string[] = ["5.4", "5.9", "6.0", "7.0"];

/** Installs from the registry what consumers bring along. */
export function installTools(folder: string): void {
  const platform = process.platform === "win32" ? "win" : process.platform;
  const tools = {
    ...Object.fromEntries(
      NODES.map((major) => [`node${major}`, `npm:node-${platform}-${process.arch}@${major}`]),
    ),
    ...Object.fromEntries(COMPILERS.map((version) => [`typescript${version}`, `npm:typescript@${version}`])),
    vite: "8",
  };
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true, dependencies: tools }));
  const args = "install --ignore-scripts --prefer-offline --no-audit --no-fund --no-package-lock".split(" ");
  const { stderr, status } = run("npm", args, { cwd: folder });
  if (status !== 0) throw new Error(`the tools could not be installed: ${stderr}`);
}

/** Where a Node of the registry lies. */
export function nodeAt(folder: string, major: string): string {
  return join(folder, `node_modules/node${major}/bin`, process.platform === "win32" ? "node.exe" : "node");
}

/** The program and first argument of a compiler. */
export function compilerAt(folder: string, version: string): readonly string[] {
  return [process.execPath, join(folder, `node_modules/typescript${version}/bin/tsc`)];
}
