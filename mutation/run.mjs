import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";

/**
 * Changes the sources of packages in small ways, one change at a time, and asks whether a test notices.
 *
 *     npm run test:mutation -- PACKAGE... [-- further options of stryker, e.g. --mutate FILE]
 *
 * Without a package all are taken, which takes many hours. The score of each whole package goes into RESULTS.md.
 */
const root = new URL("../", import.meta.url);
const given = process.argv.slice(2);
const end = given.includes("--") ? given.indexOf("--") : given.length;
const options = given.slice(end + 1);
const known = readdirSync(new URL("packages", root));
const packages = end === 0 ? known : given.slice(0, end);

const unknown = packages.filter((name) => !known.includes(name));
if (unknown.length > 0) {
  console.error(`No such package: ${unknown.join(", ")}. There are ${known.join(", ")}.`);
  process.exit(2);
}
for (const name of packages) {
  const { status } = spawnSync("stryker", ["run", "mutation/stryker.config.mjs", ...options], {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, TAPEWISE_MUTATED: name },
  });
  if (status !== 0) process.exit(status ?? 1);
}
if (options.length === 0) writeResults();

function writeResults() {
  const file = new URL("RESULTS.md", import.meta.url);
  const rows = new Map();
  if (existsSync(file)) {
    for (const line of readFileSync(file, "utf8").split("\n")) {
      const name = /^\| ([a-z]+) \| *\d/u.exec(line)?.[1];
      if (name !== undefined) rows.set(name, line);
    }
  }
  for (const name of packages) rows.set(name, rowOf(name));
  const table = [...rows.keys()].sort().map((name) => rows.get(name));
  writeFileSync(
    file,
    `${[
      "# How many changed lines a test notices",
      "",
      "Written by `npm run test:mutation -- PACKAGE...`. *Killed* counts changes that a test fails for or never ends on;",
      "the score is their share of all changes. A package that is not listed was not tried yet.",
      "",
      "| package | changes | killed | survived | reached by no test | score, % |",
      "| --- | ---: | ---: | ---: | ---: | ---: |",
      ...table,
    ].join("\n")}\n`,
  );
}

/** @param {string} name */
function rowOf(name) {
  const report = JSON.parse(readFileSync(new URL(`reports/${name}.json`, import.meta.url), "utf8"));
  /** @type {{ mutants: { status: string }[] }[]} */
  const files = Object.values(report.files);
  const statuses = files.flatMap(({ mutants }) => mutants.map(({ status }) => status));
  /** @param {string[]} wanted */
  const count = (...wanted) => statuses.filter((status) => wanted.includes(status)).length;
  const killed = count("Killed", "Timeout");
  const survived = count("Survived");
  const unreached = count("NoCoverage");
  const all = killed + survived + unreached;
  return `| ${name} | ${all} | ${killed} | ${survived} | ${unreached} | ${((100 * killed) / all).toFixed(1)} |`;
}
