// The same people answered by one process, by many under GNU parallel, and by the SQL of @tapewise/duckdb.
//   npm run check:engines -- [--people N] [--lines N] [--seed N] [--write]
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { charts, fit, outcome } from "tapewise";
import { answerAlone, answerInParallel, hasGnuParallel } from "./legs.ts";
import { writePeople } from "./people.ts";
import { answerBySql, compareChoices, differencesInSqlite, openDatabase } from "./sql-leg.ts";

const { values } = parseArgs({
  options: {
    people: { type: "string", default: "1000000" },
    lines: { type: "string", default: "50000" },
    seed: { type: "string", default: "1" },
    write: { type: "boolean", default: false },
  },
});
const PEOPLE_IN_SQLITE = 2000;
const chartFile = fileURLToPath(
  new URL("../../packages/tapewise/demo/charts/thimblewick-doily-45.csv", import.meta.url),
);

async function main(): Promise<boolean> {
  const [people, lines, seed] = [values.people, values.lines, values.seed].map(Number);
  if (people === undefined || lines === undefined || seed === undefined || !(people >= 1 && lines >= 1)) {
    throw new Error("--people and --lines take whole numbers above 0");
  }
  if (!hasGnuParallel()) {
    throw new Error("GNU parallel is not there; install parallel: apt-get install parallel");
  }
  const folder = mkdtempSync(join(tmpdir(), "tapewise-engines-"));
  try {
    const file = (name: string) => join(folder, name);
    const chart = charts.parseChart(readFileSync(chartFile, "utf8"));
    const plan = outcome.unwrap(fit.safeCompileColumns(chart, { read: ["torso-length", "hip-belt-girth"] }));
    const { ends, starts } = plan.tables;
    const endsOf = (k: number) => Array.from(ends.subarray(starts[k], starts[k + 1]));
    tell(`writing ${people} people`);
    await writePeople(file("people.ndjson"), people, seed, { torso: endsOf(0), girth: endsOf(1) });
    tell("one process");
    const alone = answerAlone(chartFile, file("people.ndjson"), file("alone.ndjson"));
    tell(`${alone.toFixed(1)} s; GNU parallel`);
    const inParallel = answerInParallel(chartFile, file("people.ndjson"), file("parallel.ndjson"), lines);
    tell(`${inParallel.toFixed(1)} s; SQL`);
    const same = isSame(file("alone.ndjson"), file("parallel.ndjson"));
    const connection = await openDatabase(file("people.duckdb"));
    const bySql = await answerBySql(connection, plan, file("people.ndjson"));
    tell(`${bySql.toFixed(1)} s; comparing`);
    const found = await compareChoices(connection, file("alone.ndjson"));
    const tried = Math.min(people, PEOPLE_IN_SQLITE);
    const inSqlite = await differencesInSqlite(connection, plan, tried);
    connection.closeSync();

    const share = (count: number) => `${count} (${((100 * count) / people).toFixed(2)} %)`;
    const ratio = (seconds: number) => (seconds / alone).toFixed(2);
    const findings = [
      { holds: same, text: "GNU parallel gives the bytes of one process" },
      {
        holds: found.people === people && found.missing === 0,
        text: "every person has a choice in all of them",
      },
      {
        holds: found.otherPicksOfSureOnes === 0,
        text: "SQL gives the picks of the command, where it calls itself sure",
      },
      { holds: found.otherVerdicts === 0, text: "and its verdicts, where no further reading is asked for" },
      {
        holds: found.farthestProbability <= 5.1e-10,
        text: "and its probabilities, to the nine decimals that the command writes",
      },
      {
        holds: inSqlite === 0,
        text: `the same query gives ${tried} people the same picks and verdicts in SQLite`,
      },
    ];
    const text = `# One process, many processes, and SQL

Written by \`npm run check:engines -- --write\`.

${people} invented people with two to four readings of back and girth each, their error stated, against Thimblewick Doily 45. Seed ${seed}; ${availableParallelism()} processors, load ${loadavg()[0]?.toFixed(1)}; Node ${process.version}; commit ${commit()}.

## What is required

${findings.map(({ holds, text: what }) => `- ${holds ? "holds" : "DOES NOT HOLD"}: ${what}.`).join("\n")}

## Figures

| | |
| --- | ---: |
| people whom SQL gives another pick than the command | ${share(found.otherPicks)} |
| people on a tie, where the last digits of a figure decide (\`is_close\`) | ${share(found.close)} |
| people whom the command asks to measure again, which SQL leaves to it | ${share(found.askedAgain)} |
| largest difference of a probability | ${found.farthestProbability.toExponential(1)} |
| time of GNU parallel, ${lines} lines a process, as a ratio to one process | ${ratio(inParallel)} |
| time of SQL, reading the people and forming beliefs included, as a ratio to one process | ${ratio(bySql)} |
`;
    process.stdout.write(text);
    if (values.write) writeFileSync(new URL("RESULTS.md", import.meta.url), text);
    return findings.every(({ holds }) => holds);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function tell(text: string): void {
  process.stderr.write(`${text}\n`);
}

function isSame(one: string, other: string): boolean {
  try {
    execFileSync("cmp", [one, other], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

function commit(): string {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  } catch {
    return "unknown";
  }
}

main().then(
  (holds) => {
    process.exitCode = holds ? 0 : 1;
  },
  (error: unknown) => {
    tell(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  },
);
