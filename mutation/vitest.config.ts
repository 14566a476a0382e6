import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = new URL("../", import.meta.url);
const mutated = process.env["TAPEWISE_MUTATED"];
if (mutated === undefined) throw new Error("TAPEWISE_MUTATED names the package whose tests are run.");

/** Each name that is imported, and the file of this copy that it stands for: linked packages lie outside of a copy. */
function sources(): { readonly find: RegExp; readonly replacement: string }[] {
  return readdirSync(new URL("packages", root)).flatMap((folder) => {
    const { name, exports } = JSON.parse(
      readFileSync(new URL(`packages/${folder}/package.json`, root), "utf8"),
    );
    return Object.entries(exports).map(([path, target]) => {
      const file =
        typeof target === "string" ? target : (target as Record<string, string>)["@tapewise/source"];
      return {
        find: new RegExp(`^${name}${path.slice(1)}$`),
        replacement: fileURLToPath(new URL(`packages/${folder}/${file}`, root)),
      };
    });
  });
}

export default defineConfig({
  resolve: { alias: sources() },
  test: {
    include: [
      `tests/${mutated}/**/*.test.ts`,
      `tests/laws/${mutated}-*.test.ts`,
      `tests/types/${mutated}.test.ts`,
      `reference-checks/${mutated}*.test.ts`,
    ],
    setupFiles: ["scripts/seed.ts"],
    testTimeout: 60_000,
    root: fileURLToPath(root),
  },
});
