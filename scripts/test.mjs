// What `npm test` runs: every stage in turn, stopping at the first that fails. With `--site` the site is
// built and driven with a real browser too (`npm run test:all`). The last line on standard output is always
// `N passed, N failed`, whatever happened.
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { countTests } from "./count-tests.mjs";
import { refusal } from "./refusal.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const stages = [
  { name: "types", script: "typecheck" },
  { name: "lint", script: "lint" },
  { name: "unused code and dependencies", script: "unused" },
  { name: "build", script: "build" },
];
const withSite = process.argv.includes("--site");

/**
 * Runs one of the scripts of package.json.
 *
 * @param {string} script
 * @param {string[]} args
 */
function run(script, args = []) {
  const colour = process.env.CI === "true" ? { NO_COLOR: "1", FORCE_COLOR: "0" } : {};
  const { status } = spawnSync(
    "npm",
    ["run", "--silent", script, ...(args.length > 0 ? ["--", ...args] : [])],
    {
      cwd: root,
      env: { ...process.env, ...colour },
      shell: process.platform === "win32",
      stdio: "inherit",
    },
  );
  return status === 0;
}

/**
 * Runs a stage and says so before and after.
 *
 * @param {string} name
 * @param {() => boolean} work
 */
function stage(name, work) {
  console.log(`\n== ${name}`);
  const start = performance.now();
  const done = work();
  console.log(
    `== ${name}: ${done ? "passed" : "FAILED"} after ${((performance.now() - start) / 1000).toFixed(1)} s`,
  );
  return done;
}

/**
 * @param {number} passed
 * @param {number} failed
 */
function finish(passed, failed) {
  console.log(`\n${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
}

function main() {
  const reason = refusal(process.versions.node, existsSync(join(root, "node_modules")));
  if (reason !== undefined) {
    console.error(reason);
    return finish(0, 1);
  }
  for (const { name, script } of stages) {
    if (!stage(name, () => run(script))) {
      console.error(`The tests were not run, because "npm run ${script}" failed.`);
      return finish(0, 1);
    }
  }
  const folder = mkdtempSync(join(tmpdir(), "tapewise-test-"));
  try {
    const results = [runTests("tests", "test:unit", join(folder, "unit.json"))];
    if (withSite) {
      const checked = stage("types of the site", () => run("check:site"));
      results.push(
        checked ? runTests("site", "test:site", join(folder, "site.json")) : { passed: 0, failed: 1 },
      );
    }
    return finish(sum(results, "passed"), sum(results, "failed"));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Runs a script that passes its arguments to the test runner, and counts from the runner's own report.
 *
 * @param {string} name
 * @param {string} script
 * @param {string} report where the report is to be written
 */
function runTests(name, script, report) {
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const clean = stage(name, () => run(script, reporters));
  const { passed, failed } = countTests(
    existsSync(report) ? JSON.parse(readFileSync(report, "utf8")) : undefined,
  );
  // A run that fails without a failing test (an error outside of tests) still failed.
  return { passed, failed: clean ? failed : Math.max(failed, 1) };
}

/**
 * @param {{ passed: number, failed: number }[]} results
 * @param {"passed" | "failed"} key
 */
function sum(results, key) {
  return results.reduce((total, result) => total + result[key], 0);
}

main();
