import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { afterAll, describe, expect, test } from "vitest";
import { readWorkspace } from "../architecture/workspace.ts";
import { makeFolder, packAll, run } from "./packed.ts";

const folder = makeFolder();
afterAll(folder.remove);
const tarballs = packAll(folder.path);
const packages = readWorkspace().filter((entry) => entry.folder !== "site");

const attwManifest = fileURLToPath(import.meta.resolve("@arethetypeswrong/cli/package.json"));
const attw = join(attwManifest, "..", JSON.parse(readFileSync(attwManifest, "utf8")).bin.attw);

test("every package is packed", () => {
  expect(tarballs.map(({ name }) => name).sort()).toEqual(
    packages.map(({ manifest }) => manifest.name).sort(),
  );
});

describe.each(packages)("the tarball of $folder", ({ manifest, files: sources }) => {
  const tarball = tarballs.find(({ name }) => name === manifest.name);
  const files = tarball?.files ?? [];
  const path = tarball?.path ?? "";

  test("holds what was built from each source, the source, and nothing of another kind", () => {
    const stems = sources
      .filter((file) => /(?<!\.d)\.ts$/.test(file.path))
      .map((file) => file.path.slice(4, -3));
    const built = stems.flatMap((stem) =>
      [".js", ".js.map", ".d.ts", ".d.ts.map"].map((extension) => `dist/${stem}${extension}`),
    );
    const command = files.filter((file) => /^(bin|demo)\//.test(file));
    expect(command.length > 0).toBe(manifest.bin !== undefined);
    expect(
      files,
      "if only dist differs, it is left over from older sources: remove it and build again",
    ).toEqual(
      [
        "LICENSE",
        "README.md",
        "package.json",
        ...built,
        ...sources.map((file) => file.path),
        ...command,
      ].sort(),
    );
  });

  test("satisfies publint", async () => {
    const { buffer, byteOffset, byteLength } = readFileSync(path);
    const bytes = buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer;
    const { messages, pkg } = await publint({ pack: { tarball: bytes }, strict: true });
    expect(messages.map((message) => formatMessage(message, pkg, { color: false }))).toEqual([]);
  });

  test("satisfies attw: its types are found and are those of its modules", () => {
    const { stdout, status } = run(process.execPath, [
      attw,
      path,
      "--profile",
      "esm-only",
      "--no-color",
      "--no-emoji",
    ]);
    expect(status, stdout).toBe(0);
    expect(stdout).toContain("OK (ESM)");
  });
});
