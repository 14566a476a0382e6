// Compares every computed figure with values from outside, and prints how far they agree.
//   npm run check:reference [-- --write]
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Agreement } from "./agreement.ts";
import { agreementsFile } from "./committed.ts";
import { plainTable, referencePage, sitePage } from "./page.ts";

const root = join(import.meta.dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "tapewise-agreements-"));
const tests = readdirSync(join(root, "reference-checks"))
  .filter((file) => file.endsWith(".test.ts"))
  .map((file) => `${root}/reference-checks/${file}`);
const vitest = join(root, "node_modules/vitest/vitest.mjs");
const { status } = spawnSync(process.execPath, [vitest, "run", ...tests, "--reporter=dot"], {
  cwd: root,
  env: { ...process.env, TAPEWISE_AGREEMENTS: folder },
  stdio: ["ignore", "inherit", "inherit"],
});
const rows = readdirSync(folder)
  .sort()
  .flatMap((file) => JSON.parse(readFileSync(join(folder, file), "utf8")) as readonly Agreement[]);
rmSync(folder, { recursive: true });
process.stdout.write(`${plainTable(rows)}\n`);
if (process.argv.includes("--write")) {
  writeFileSync(agreementsFile, rows.map((row) => `${JSON.stringify(row)}\n`).join(""));
  writeFileSync(join(root, "reference-checks/REFERENCE.md"), referencePage(rows));
  writeFileSync(join(root, "site/src/content/docs/reference/reference-checks.md"), sitePage(rows));
}
process.exitCode = status ?? 1;
